// The age of a pack by the resistance of its cells, read from a charger or worked out from two loads.

import { defineCommand, type Inputs, optional } from '../../src/assistant/old-command.ts'
import type { Answer } from '../../src/assistant/reply.ts'
import { careCautions } from '../../src/cautions/pack-care.ts'
import { resistanceFactor, wholeOverReading } from '../../src/charging/simulation/cell.ts'
import {
  type Age,
  ages,
  type Health,
  judgeHealth,
  oddCell,
  publishedResistance,
  resistanceFromLoads,
} from '../../src/charging/upkeep/health.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { Show } from '../../src/ground/show.ts'
import { cellResistancesKind, loadKind } from '../../src/language/kinds/reading-kinds.ts'
import { packKind, resistanceKind, temperatureKind } from '../../src/language/kinds/values.ts'
import { chargedPack } from '../shared/charge-options.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp } from '../shared/follow-up.ts'
import { cite } from '../shared/working.ts'

const options = {
  pack: chargedPack,
  resistance: optional(cellResistancesKind, {
    description: 'of one cell, or one for each cell, as a charger or meter shows it',
    phrase: text => `cells of ${text}`,
  }),
  one: optional(loadKind, {
    description: 'instead of a resistance: amps out of the pack and its volts, or rest and its volts',
    phrase: text => `${text} under one load`,
  }),
  other: optional(loadKind, {
    description: 'the same under another load, some seconds later',
    phrase: text => `${text} under the other`,
  }),
  temperature: optional(temperatureKind, {
    description: 'of the cells when they were measured; 25 °C when not said',
    phrase: text => `cells at ${text}`,
  }),
  new: optional(resistanceKind, {
    description: 'of one cell when the pack was new',
    phrase: text => `${text} when new`,
  }),
}

type Asked = Inputs<typeof options>

export const health = defineCommand({
  name: 'health',
  summary: 'The age of a pack by its cell resistance, read or from two loads.',
  options,
  examples: [
    'health pack: 4S 1500 LiPo resistance: 9 10 9 15 mΩ temperature: 20°C',
    'health pack: 6S 1300 LiPo one: rest 23.8V other: 20A 21.9V',
    'health pack: 3S 720 LiHV resistance: 28mΩ new: 20mΩ',
  ],
  plainWords: ['health', 'internal resistance', 'ir', 'worn out', 'still good', 'past its best'],
  meantBy: [['pack', 'resistance']],
  answer: (inputs, { show }) => {
    const { pack, temperature, new: fresh } = inputs
    const cells_ohm = resistancesOf(inputs)
    const found = judgeHealth({
      pack,
      cells_ohm,
      temperature_C: temperature,
      fresh_ohm: fresh,
    })
    const figure = figuresIn(show)
    return {
      verdict: found.odd !== undefined && verdicts[found.age] === 'go' ? 'go with care' : verdicts[found.age],
      headline: headline(found, inputs, cells_ohm, show),
      figures: [
        figure.resistance('cellResistance', 'a cell as measured', found.cell_ohm),
        figure.resistance('cellResistance25C', 'a cell at 25 °C', found.at25C_ohm),
        figure.resistance('resistanceFor1Ah', 'at 25 °C for a cell of 1 Ah', found.at25C_ohmAh),
        figure.resistance(
          'likeFor1Ah',
          fresh === undefined ? 'the most of its like, for 1 Ah' : 'itself when new, for 1 Ah',
          found.like_ohmAh.high,
        ),
        {
          key: 'times',
          label: 'times as much',
          value: found.times,
          unit: 'count',
          text: show.number(found.times, 2),
        },
      ],
      working: working(inputs, found, cells_ohm, show),
      cautions: careCautions('health', { pack }),
      followUps: [
        followUp('How long to charge?', 'time', {
          pack: packKind.write({ ...pack, cellResistance_ohm: rounded(found.cell_ohm) }),
        }),
      ],
      assumed: temperature === undefined ? ['the cells were at 25 °C; cold ones read higher'] : [],
    }
  },
})

const rounded = (ohm: number): number => Number(Math.min(1, Math.max(1e-5, ohm)).toPrecision(3))

const verdicts: Record<Age, NonNullable<Answer['verdict']>> = {
  'as its like': 'go',
  aged: 'go',
  tired: 'go with care',
  'worn out': 'do not charge',
}

/** Throws a Problem where neither a resistance nor two loads are given, or they tell nothing. */
function resistancesOf({ pack, resistance, one, other }: Asked): readonly number[] {
  if (resistance) {
    if (resistance.length === 1 || resistance.length === pack.series) return resistance
    throw new Problem({
      what: `There are ${resistance.length} resistances for ${pack.series} cells.`,
      token: cellResistancesKind.write(resistance),
      expected: `one resistance, or ${pack.series}`,
      example: 'resistance: 12mΩ',
    })
  }
  if (!one && !other && pack.cellResistance_ohm !== undefined) return [pack.cellResistance_ohm]
  if (!one || !other) {
    throw new Problem({
      what: 'I need the resistance of a cell, or the volts under two loads.',
      expected: 'resistance: as the charger shows it, or one: and other: with amps and pack volts',
      example: 'health pack: 6S 1300 LiPo one: rest 23.8V other: 20A 21.9V',
    })
  }
  const cell_ohm = resistanceFromLoads(one, other, pack.series)
  if (Number.isFinite(cell_ohm) && cell_ohm > 0) return [cell_ohm]
  throw new Problem({
    what: 'More amps must show fewer volts; these two readings do not.',
    token: `${loadKind.write(one)}, ${loadKind.write(other)}`,
    expected: 'two loads that differ, the volts of the pack under each',
    example: 'one: rest 23.8V other: 20A 21.9V',
  })
}

function headline(found: Health, inputs: Asked, cells_ohm: readonly number[], show: Show): string {
  const { age, at25C_ohm, odd } = found
  const { recommendedRate_C } = inputs.pack.chemistry
  const measured = `A cell has ${show.resistance(at25C_ohm)} at 25 °C, ${besideWords(found, inputs, show)}`
  const words: Record<Age, string> = {
    'as its like': `${measured}.`,
    aged: `${measured}: the pack has aged, and will sag and warm more.`,
    tired: `${measured}: the pack is tired. Keep it for gentle use, and charge it at no more than ${show.rate(Math.min(1, recommendedRate_C.value))}.`,
    'worn out': `${measured}: the pack is worn out. Measure once more with clean plugs and warm cells; if that agrees, discharge it and hand it in for recycling.`,
  }
  const apart =
    odd === undefined
      ? ''
      : ` Cell ${odd + 1} stands out with ${show.resistance(cells_ohm[odd] as number)}: watch it, it will be empty and full before the others.`
  return `${words[age]}${apart}`
}

function besideWords({ at25C_ohmAh, like_ohmAh, times }: Health, { new: fresh }: Asked, show: Show): string {
  if (fresh !== undefined) return `${show.number(times, 1)} times that of itself when new`
  const range = `${show.resistance(like_ohmAh.low)} to ${show.resistance(like_ohmAh.high)}`
  const forOne = `or ${show.resistance(at25C_ohmAh)} for a cell of 1 Ah`
  if (times > 1)
    return `${forOne}; that is ${show.number(times, 1)} times the most that published cells of this kind show (${range})`
  return at25C_ohmAh < like_ohmAh.low
    ? `${forOne}; that is less than published cells of this kind show (${range}), as in packs made for high discharge`
    : `${forOne}; that is as published cells of this kind show (${range})`
}

function working(inputs: Asked, found: Health, cells_ohm: readonly number[], show: Show): string[] {
  const { pack, one, other, resistance, temperature = 25, new: fresh } = inputs
  const loads =
    resistance || !one || !other
      ? []
      : [
          `From the loads: (${show.voltage(one.pack_V)} − ${show.voltage(other.pack_V)}) ÷ (${show.current(other.current_A)} − ${show.current(one.current_A)}) ÷ ${pack.series} = ${show.resistance(found.cell_ohm)} a cell, with its share of plugs and leads.`,
        ]
  const mean =
    cells_ohm.length > 1 ? [`Mean of ${cells_ohm.length} cells: ${show.resistance(found.cell_ohm)}.`] : []
  const known = publishedResistance(pack.chemistry)
  const like =
    fresh === undefined
      ? `Its like, for 1 Ah: ${show.resistance(known.value.low)} to ${show.resistance(known.value.high)} through a long charge (${cite(known)}); a reading of some seconds shows 1 / ${show.number(wholeOverReading, 2)} of that (fitted on measured charges). What yours has when new tells more: note it, and give it as "new".`
      : `Itself: ${show.resistance(fresh)} × ${show.capacity(pack.capacity_Ah)} = ${show.resistance(found.like_ohmAh.high)} for 1 Ah.`
  return [
    ...loads,
    ...mean,
    `At 25 °C: ${show.resistance(found.cell_ohm)} ÷ ${show.number(resistanceFactor(temperature), 2)} = ${show.resistance(found.at25C_ohm)} (resistance against temperature: two published production battery tables).`,
    `For 1 Ah: × ${show.capacity(pack.capacity_Ah)} = ${show.resistance(found.at25C_ohmAh)}; resistance falls as capacity grows.`,
    like,
    `Judged by: ${cite(ages)}; ${cite(oddCell)}.`,
  ]
}
