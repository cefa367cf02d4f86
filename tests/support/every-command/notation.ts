// One fact in many notations: units, decimal marks, spaces, digits, case, words, lists, names of a kit.

import fc from 'fast-check'
import { restingVoltage } from '../../../src/charging/things/curve.ts'
import {
  type SavedPack,
  type Scene,
  type SceneCharger,
  type SceneSource,
  type Stand,
  strictStorage_V,
} from './scene.ts'

export interface Style {
  readonly comma: boolean
  readonly gap: string
  readonly wide: boolean
  readonly letters: 'usual' | 'lower' | 'upper'
  readonly stand: 'as it is' | 'volts of a cell' | 'millivolts' | 'volts of the pack' | 'volts a cell'
  readonly fahrenheit: boolean
  readonly current: 'A' | 'mA' | 'C'
  readonly capacity: 'mAh' | 'Ah' | 'bare'
  /** By the name in the kit. */
  readonly named: boolean
  /** Two packs as two, not as a count. */
  readonly oneByOne: boolean
  /** Its options already apart, as a form has them. */
  readonly apart: boolean
}

export const usualStyle: Style = {
  comma: false,
  gap: '',
  wide: false,
  letters: 'usual',
  stand: 'as it is',
  fahrenheit: false,
  current: 'A',
  capacity: 'mAh',
  named: false,
  oneByOne: false,
  apart: false,
}

export const someStyle: fc.Arbitrary<Style> = fc.record({
  comma: fc.boolean(),
  gap: fc.constantFrom('', ' ', '\u00a0', '\u202f', '\u2009'),
  wide: fc.boolean(),
  letters: fc.constantFrom('usual' as const, 'lower' as const, 'upper' as const),
  stand: fc.constantFrom(
    'as it is' as const,
    'volts of a cell' as const,
    'millivolts' as const,
    'volts of the pack' as const,
    'volts a cell' as const,
  ),
  fahrenheit: fc.boolean(),
  current: fc.constantFrom('A' as const, 'mA' as const, 'C' as const),
  capacity: fc.constantFrom('mAh' as const, 'Ah' as const, 'bare' as const),
  named: fc.constantFrom(true, false, false),
  oneByOne: fc.boolean(),
  apart: fc.boolean(),
})

const synonyms: Readonly<Record<string, readonly [string, string]>> = {
  full: ['full', 'fully charged'],
  storage: ['storage', 'storage voltage'],
  landed: ['landed', 'flat'],
}

/** The volts of a cell that stands so. */
export function voltsOf(stand: Stand, { pack: { chemistry }, club }: Scene): number {
  if (stand.kind === 'volts') return stand.perCell_V
  if (stand.kind === 'share') return restingVoltage(chemistry, stand.percent / 100)
  if (stand.word === 'full') return restingVoltage(chemistry, 1)
  if (stand.word === 'landed') return chemistry.restFloor_V.value
  return club === 'plain' ? chemistry.storage_V.value : (strictStorage_V[chemistry.name] as number)
}

export interface Writer {
  readonly style: Style
  pack(pack: SavedPack): string
  stand(stand: Stand, scene: Scene): string
  /** The volts of every cell, one behind the other. */
  cells(stand: Stand, scene: Scene): string
  current(scene: Scene, rate_C: number): string
  capacity(value_Ah: number): string
  percent(value: number): string
  power(value_W: number): string
  resistance(value_mohm: number): string
  temperature(value_C: number): string
  charger(charger: SceneCharger): string
  source(source: SceneSource): string
  /** So many packs that stand alike. */
  group(count: number, one: string): string
}

export function writer(style: Style): Writer {
  const { gap, letters } = style
  const digits = (value: number): string => {
    const text = String(Number(value.toPrecision(13)))
    const marked = style.comma ? text.replace('.', ',') : text
    // A comma before three digits could mark thousands.
    const clear = /^\d{1,3},\d{3}$/.test(marked) ? `${marked}0` : marked
    return style.wide ? clear.replace(/\d/g, digit => String.fromCharCode(0xff10 + Number(digit))) : clear
  }
  const unit = (name: string): string =>
    letters === 'lower' ? name.toLowerCase() : letters === 'upper' ? name.toUpperCase() : name
  const of = (value: number, name: string): string => `${digits(value)}${gap}${unit(name)}`

  const volts = (stand: Stand, scene: Scene): string => {
    const { series } = scene.pack
    const perCell_V = voltsOf(stand, scene)
    switch (style.stand) {
      case 'millivolts':
        return `${of(perCell_V * 1000, 'mV')} per cell`
      case 'volts of the pack':
        return `${of(perCell_V * series, 'V')} pack`
      case 'volts a cell':
        return `${of(perCell_V, 'V')}/cell`
      default:
        return `${of(perCell_V, 'V')} per cell`
    }
  }
  const stand: Writer['stand'] = (one, scene) => {
    if (one.kind === 'volts' || style.stand !== 'as it is') return volts(one, scene)
    if (one.kind === 'share') return of(one.percent, '%')
    const [usual, other] = synonyms[one.word] ?? ['', '']
    return unit(style.oneByOne ? other : usual)
  }
  const pack = (one: SavedPack): string => {
    if (style.named) return one.name
    const { series, capacity_Ah, chemistry, charge_C, discharge_C } = one
    const size =
      style.capacity === 'Ah'
        ? of(capacity_Ah, 'Ah')
        : style.capacity === 'mAh'
          ? of(capacity_Ah * 1000, 'mAh')
          : digits(capacity_Ah * 1000)
    return [
      `${digits(series)}${unit('S')}`,
      size,
      chemistry.name,
      charge_C === undefined ? '' : `${digits(charge_C)}${unit('C')} charge`,
      discharge_C === undefined ? '' : `${digits(discharge_C)}${unit('C')} discharge`,
    ]
      .filter(Boolean)
      .join(' ')
  }
  return {
    style,
    pack,
    stand,
    cells: (one, scene) => {
      const perCell_V = voltsOf(one, scene)
      const text = style.stand === 'millivolts' ? of(perCell_V * 1000, 'mV') : digits(perCell_V)
      return Array.from({ length: scene.pack.series }, () => text).join(style.oneByOne ? '; ' : ' ')
    },
    current: ({ pack: { capacity_Ah } }, rate_C) => {
      if (style.current === 'C') return of(rate_C, 'C')
      const current_A = Number((rate_C * capacity_Ah).toPrecision(12))
      return style.current === 'mA' ? of(current_A * 1000, 'mA') : of(current_A, 'A')
    },
    capacity: value_Ah => (style.capacity === 'Ah' ? of(value_Ah, 'Ah') : of(value_Ah * 1000, 'mAh')),
    percent: value => of(value, '%'),
    power: value_W => of(value_W, 'W'),
    resistance: value_mohm => `${digits(value_mohm)}${gap}mΩ`,
    temperature: value_C =>
      style.fahrenheit
        ? `${signed((value_C * 9) / 5 + 32, digits)}${gap}°${unit('F')}`
        : `${signed(value_C, digits)}${gap}°${unit('C')}`,
    charger: ({ steps_A, power_W, most, input_V }) => {
      const currents =
        'to_A' in steps_A
          ? `${digits(steps_A.by_A)}-${of(steps_A.to_A, 'A')} by ${digits(steps_A.by_A)}`
          : `${steps_A.map(digits).join('/')}${gap}${unit('A')}`
      return `${currents} ${of(power_W, 'W')} ${digits(1)}-${digits(most)}${unit('S')} ${digits(input_V[0])}-${of(input_V[1], 'V')}`
    },
    source: source => {
      switch (source.kind) {
        case 'PD':
          return `${unit('PD')} ${of(source.power_W, 'W')}`
        case 'supply':
          return `${of(source.volts, 'V')} ${of(source.amps, 'A')}`
        case 'bank':
          return `power bank ${of(source.energy_Wh, 'Wh')} ${unit('PD')} ${of(source.power_W, 'W')}`
        case 'pack':
          return pack(source.pack)
        case 'car': {
          const rest = source.rest_V === undefined ? '' : ` rest ${of(source.rest_V, 'V')}`
          return `car ${of(source.fuse_A, 'A')} engine ${source.running ? 'running' : 'off'}${rest}`
        }
      }
    },
    group: (count, one) =>
      style.oneByOne ? Array.from({ length: count }, () => one).join('; ') : `${digits(count)}x ${one}`,
  }
}

const signed = (value: number, digits: (value: number) => string): string =>
  value < 0 ? `-${digits(-value)}` : digits(value)
