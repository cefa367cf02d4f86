// A source that was told, in notation, as far as it was told.

import { decimalText } from '../sentence/written.ts'
import type { SourceDraft } from './source-parts.ts'

const figures = (...words: readonly (string | false | undefined)[]): string => words.filter(Boolean).join(' ')

/** In notation, as far as it was told. */
export function writtenSource(draft: SourceDraft): string {
  const { kind, chemistry, volts, rest, amps, watts, energy_Wh, capacity_Ah, engine } = draft
  const ampsText = amps !== undefined && `${decimalText(amps)}A`
  const wattsText = watts !== undefined && `${decimalText(watts)}W`
  const capacityText = capacity_Ah !== undefined && `${decimalText(capacity_Ah)}Ah`
  const pair = figures(volts !== undefined && `${volts}V`, ampsText, amps === undefined && wattsText)
  if (chemistry !== undefined && chemistry !== 'AGM') return writtenLithium(draft)
  switch (kind) {
    case 'bank':
    case 'station': {
      const energy = energy_Wh !== undefined && `${decimalText(energy_Wh)}Wh`
      const output = amps !== undefined && volts !== undefined ? pair : wattsText && `PD ${wattsText}`
      const mAh = energy_Wh === undefined && capacity_Ah !== undefined && `${decimalText(capacity_Ah, 3)}mAh`
      return figures('power bank', energy, mAh, output)
    }
    case 'pd':
    case 'usb-c':
      return volts !== undefined && amps !== undefined ? `USB ${pair}` : figures('PD', wattsText)
    case 'usb':
      return watts !== undefined && watts > 15 && volts === undefined ? `PD ${wattsText}` : figures('USB', pair)
    case 'mains':
      return figures('generator', pair)
    case 'panel':
      return figures('solar panel', pair)
    case 'vehicle':
    case 'leisure':
    case 'lead': {
      const isRest = rest === undefined && volts !== undefined && volts.includes('.')
      const rested = rest ?? (isRest ? volts : undefined)
      const nominal = volts !== undefined && Number(volts) === 24 && '24V'
      const battery = kind === 'lead' || capacity_Ah !== undefined
      const word = kind === 'leisure' ? 'leisure battery' : battery ? 'car battery' : 'car'
      const state = engine !== undefined && `engine ${engine}`
      return figures(word, nominal, ampsText, state, rested !== undefined && `rest ${rested}V`, capacityText)
    }
    default:
      return capacity_Ah === undefined
        ? pair || 'supply'
        : figures('car battery', rest !== undefined && `rest ${rest}V`, capacityText)
  }
}

/** "100ah lifepo 12v": a battery as a pack is written, its cells by its volts. */
function writtenLithium({ chemistry = '', volts = '12', capacity_Ah }: SourceDraft): string {
  const perCell = chemistry === 'LiFe' ? 3.2 : 3.6
  const series = Math.max(1, Math.round(Number(volts) / perCell))
  return figures(`${series}S`, capacity_Ah !== undefined && `${decimalText(capacity_Ah, 3)}mAh`, chemistry)
}
