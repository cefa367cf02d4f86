// A flight pack as the supply of a phone or another device through a converter.

import { defineCommand, type Inputs, optional, required } from '../../src/assistant/old-command.ts'
import { careCautions } from '../../src/cautions/pack-care.ts'
import {
  converterEfficiency,
  deviceEfficiency,
  type Lending,
  lend as lendOut,
  mostLent_W,
} from '../../src/charging/sources/lend.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import { batterySourceRate_C } from '../../src/charging/things/practice.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { Show } from '../../src/ground/show.ts'
import { energyKind, packKind, percentKind, powerKind, stateKind } from '../../src/language/kinds/values.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp } from '../shared/follow-up.ts'
import { levelsOf } from '../shared/levels.ts'
import { refusedAnswer } from '../shared/refused.ts'
import { cite } from '../shared/working.ts'

const options = {
  pack: required(packKind, { description: 'the pack that lends', phrase: text => text }),
  power: required(powerKind, { description: 'what the device takes', phrase: text => `lent at ${text}` }),
  from: optional(stateKind, { description: 'where the pack stands now; full when not said' }),
  device: optional(energyKind, {
    description: "what the device's battery holds",
    phrase: text => `to a battery of ${text}`,
  }),
  efficiency: optional(percentKind, {
    description: 'of the converter',
    phrase: text => `through a converter of ${text}`,
  }),
}

type Asked = Inputs<typeof options>

export const lend = defineCommand({
  name: 'lend',
  summary: 'A flight pack as supply for a phone or other device: energy, time, where to stop.',
  options,
  examples: [
    'lend pack: 4S 1500 LiPo power: 10W device: 19Wh',
    'lend pack: 6S 1300 LiPo from: 3.85V per cell power: 20W efficiency: 90%',
    'lend pack: 2S 5000 Li-ion from: 80% power: 5W',
  ],
  plainWords: ['lend', 'my phone', 'a phone', 'my laptop', 'power my', 'run my', 'run a', 'as a power bank'],
  meantBy: [
    ['pack', 'power'],
    ['pack', 'energy'],
  ],
  answer: (inputs, { house, show }) => {
    const { pack, power, device, efficiency } = inputs
    refuseUseless(efficiency)
    const { from, restPerCell_V } = levelsOf(pack, house, inputs.from ?? { kind: 'named', name: 'full' })
    const known = { pack, restPerCell_V }
    const most_W = mostLent_W(pack, house, efficiency)
    const lent = lendOut({
      pack,
      from,
      power_W: power,
      limits: house,
      device_Wh: device,
      efficiency,
    })
    if ('refusal' in lent) return refusedAnswer(lent, known, show)
    const isTooMuch = power > most_W * (1 + 1e-9)
    const givesNothing = lent.duration_s < 60
    const figure = figuresIn(show)
    return {
      headline: isTooMuch
        ? tooMuch(inputs, most_W, show)
        : givesNothing
          ? nothing(inputs, lent, show)
          : headline(inputs, lent, show),
      figures: [
        figure.energy('energyGiven', 'into the device', lent.given_Wh),
        figure.duration('lendTime', 'time', lent.duration_s),
        figure.voltage('stopVoltage', 'stop at, under load', lent.stop_V),
        figure.perCell('stopPerCell', 'per cell', lent.stopPerCell_V),
        figure.current('current', 'out of the pack at most', lent.current_A),
        figure.percent('chargeLeft', 'charge left in the pack', lent.leftSoc),
        figure.power('mostPower', 'most power to lend', most_W),
        ...(lent.fills === undefined
          ? []
          : [figure.percent('deviceCharge', "of the device's battery", lent.fills)]),
      ],
      working: working(inputs, lent, house, show),
      cautions: careCautions('lend', known),
      followUps:
        isTooMuch || givesNothing
          ? []
          : [
              followUp('How long to charge it again?', 'time', {
                pack: packKind.write(pack),
                from: `${percentKind.write(Math.round(lent.leftSoc * 100) / 100)}`,
              }),
            ],
      assumed: [
        ...(inputs.from ? [] : ['the pack is taken to be full']),
        ...(efficiency === undefined
          ? [
              `the converter is taken to pass on ${show.percent(converterEfficiency.value)} (${cite(converterEfficiency)})`,
            ]
          : []),
      ],
    }
  },
})

function refuseUseless(efficiency: number | undefined): void {
  if (efficiency === undefined || efficiency >= 0.3) return
  throw new Problem({
    what: 'No converter is that lossy.',
    token: percentKind.write(efficiency),
    expected: 'an efficiency from 30 to 100 %',
    example: 'efficiency: 85%',
  })
}

const tooMuch = ({ pack, power }: Asked, most_W: number, show: Show): string =>
  `Do not lend ${show.power(power)} from this pack: near its floor that is more than ${show.rate(batterySourceRate_C.value)} out of ${show.capacity(pack.capacity_Ah)}. Lend ${show.number(Math.floor(most_W), 0)} W at most, or use a larger pack.`

const nothing = ({ power }: Asked, { stop_V }: Lending, show: Show): string =>
  `Do not lend ${show.power(power)} from this pack: under that load it sinks to its floor of ${show.voltage(stop_V)} at once. Lend less power, or use another pack.`

function headline(
  { power }: Asked,
  { given_Wh, duration_s, fills, stop_V, stopPerCell_V }: Lending,
  show: Show,
): string {
  const device =
    fills === undefined
      ? ''
      : fills >= 1
        ? `, which fills the device ${show.number(Math.floor(fills * 10) / 10, 1)} times`
        : `, which is ${show.percent(Math.floor(fills * 100) / 100)} of the device's battery`
  return `It lends about ${show.energy(given_Wh)}, ${lasting(duration_s, show)} at ${show.power(power)}${device}. Stop at ${show.perCell(stopPerCell_V)} in the lowest cell (${show.voltage(stop_V)} in all, under load).`
}

/** Rounded down: it must not promise more than it holds. */
const lasting = (duration_s: number, show: Show): string =>
  show.duration(Math.max(60, Math.floor(duration_s / 60) * 60))

function working(
  { pack, power, device, efficiency }: Asked,
  lent: Lending,
  house: HouseLimits,
  show: Show,
): string[] {
  const { loadFloor_V } = pack.chemistry
  const byHouse = (house.sourceFloorPerCell_V?.[pack.chemistry.name] ?? 0) > loadFloor_V.value
  return [
    `Floor: ${show.perCell(lent.stopPerCell_V)} per cell under load (${byHouse ? 'the rules of this house' : cite(loadFloor_V)}).`,
    `Out of the pack: ${show.power(power)} ÷ ${show.number(lent.efficiency, 2)} = ${show.power(power / lent.efficiency)} (${efficiency === undefined ? cite(converterEfficiency) : 'efficiency as given'}), down to the floor with the sag of its own resistance: ${show.energy(lent.given_Wh / lent.efficiency)}.`,
    `Into the device: × ${show.number(lent.efficiency, 2)} = ${show.energy(lent.given_Wh)}; ÷ ${show.power(power)} = ${show.duration(lent.duration_s)}.`,
    ...(device === undefined || lent.fills === undefined
      ? []
      : [
          `Of its battery: ${show.energy(lent.given_Wh)} × ${show.number(deviceEfficiency.value, 2)} ÷ ${show.energy(device)} = ${show.percent(lent.fills)} (${cite(deviceEfficiency)}).`,
        ]),
    `Current: ${show.power(power / lent.efficiency)} ÷ ${show.voltage(lent.stop_V)} = ${show.current(lent.current_A)} at most; ${cite(batterySourceRate_C)}.`,
  ]
}
