// What is said of the age of a pack.

import type { Asked, WordsOf } from '../../src/assistant/command.ts'
import { resistanceFactor } from '../../src/charging/simulation/resistance.ts'
import { ages, likeReadings, oddCell } from '../../src/charging/upkeep/health.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { packKind } from '../../src/language/kinds/values.ts'
import { ofChargeWords } from '../shared/charging.words.ts'
import { followUp } from '../shared/next.ts'
import { cite } from '../shared/setting.words.ts'
import type { health } from './health.ts'

export const healthWords: WordsOf<typeof health> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`The age of a pack by its cell resistance, read or from two loads.`,
    asks: [own('is a 4S 1500 LiPo with 9 mohm a cell worn out')],
    takes: {
      pack: ofChargeWords(locale).pack,
      resistance: {
        about: say`of one cell, or one for each cell, as a charger or meter shows it`,
        as: text => say`cells of ${text}`,
      },
      one: {
        about: say`instead of a resistance: amps out of the pack and its volts, or rest and its volts`,
        as: text => say`${text} under one load`,
      },
      other: { about: say`the same under another load, some seconds later`, as: text => say`${text} under the other` },
      temperature: {
        about: say`of the cells when they were measured; ${show.temperature(25)} when not said`,
        as: text => say`cells at ${text}`,
      },
      new: { about: say`of one cell when the pack was new`, as: text => say`${text} when new` },
    },
    answer: (found, asked) => [ageWords(found, asked, locale), oddWords(found, locale), lookWords(found, locale)],
    figures: {
      cellResistance: say`a cell as measured`,
      cellResistance25C: say`a cell at ${show.temperature(25)}`,
      resistanceFor1Ah: say`at ${show.temperature(25)} for a cell of 1 Ah`,
      likeFor1Ah: (_, { isBesideItself }) =>
        isBesideItself ? say`itself when new, for 1 Ah` : say`the most of its like, for 1 Ah`,
      times: say`times as much`,
    },
    working: (found, asked) => working(found, asked, locale),
    assumed: (_, { temperature }) => [
      temperature === undefined ? say`the cells were at ${show.temperature(25)}; cold ones read higher` : undefined,
    ],
    next: ({ cell_ohm }, { pack }) => [
      followUp(say`How long to charge?`, 'time', {
        pack: packKind.write({ ...pack, cellResistance_ohm: rounded(cell_ohm) }),
      }),
    ],
  }
}

type Found = Parameters<ReturnType<typeof healthWords>['answer']>[0]
type HealthAsked = Asked<(typeof health)['takes']>
const rounded = (ohm: number): number => Number(Math.min(1, Math.max(1e-5, ohm)).toPrecision(3))

function ageWords(found: Found, asked: HealthAsked, locale: Locale): Text {
  const { say, show } = locale
  const measured = say`A cell has ${show.resistance(found.at25C_ohm)} at ${show.temperature(25)}, ${besideWords(found, asked, locale)}`
  switch (found.age) {
    case 'as its like':
      return say`${measured}.`
    case 'aged':
      return say`${measured}: the pack has aged, and will sag and warm more.`
    case 'tired':
      return say`${measured}: the pack is tired.`
    case 'worn out':
      return say`${measured}: the pack is worn out.`
  }
}

function besideWords(
  { at25C_ohmAh, like_ohmAh, times }: Found,
  { new: fresh }: HealthAsked,
  { say, show }: Locale,
): Text {
  if (fresh !== undefined) return say`${show.number(times, 1)} times that of itself when new`
  const range = say`${show.resistance(like_ohmAh.low)} to ${show.resistance(like_ohmAh.high)}`
  const forOne = say`or ${show.resistance(at25C_ohmAh)} for a cell of 1 Ah`
  if (times > 1)
    return say`${forOne}; that is ${show.number(times, 1)} times the most that published cells of this kind show (${range})`
  return at25C_ohmAh < like_ohmAh.low
    ? say`${forOne}; that is less than published cells of this kind show (${range}), as in packs made for high discharge`
    : say`${forOne}; that is as published cells of this kind show (${range})`
}

const oddWords = ({ odd, cells_ohm }: Found, { say, show }: Locale): Text | undefined =>
  odd === undefined
    ? undefined
    : say`Cell ${show.number(odd + 1, 0)} stands out with ${show.resistance(cells_ohm[odd] ?? 0)}.`

/** Resistance is not all. */
const lookWords = ({ age }: Found, { say }: Locale): Text | undefined =>
  age === 'as its like' || age === 'aged'
    ? say`Swollen, dented or losing charge at rest it is retired whatever it reads.`
    : undefined

function working(found: Found, asked: HealthAsked, locale: Locale): readonly (Text | undefined)[] {
  const { say, show, own } = locale
  const { pack, one, other, resistance, temperature = 25 } = asked
  return [
    resistance || !one || !other
      ? undefined
      : say`From the loads: (${show.voltage(one.pack_V)} − ${show.voltage(other.pack_V)}) ÷ (${show.current(other.current_A)} − ${show.current(one.current_A)}) ÷ ${own(String(pack.series))} = ${show.resistance(found.cell_ohm)} a cell, with its share of plugs and leads.`,
    found.cells_ohm.length > 1
      ? say`Mean of ${show.number(found.cells_ohm.length, 0)} cells: ${show.resistance(found.cell_ohm)}.`
      : undefined,
    say`At ${show.temperature(25)}: ${show.resistance(found.cell_ohm)} ÷ ${show.number(resistanceFactor(temperature), 2)} = ${show.resistance(found.at25C_ohm)} (resistance against temperature: two published production battery tables).`,
    say`For 1 Ah: × ${show.capacity(pack.capacity_Ah)} = ${show.resistance(found.at25C_ohmAh)}; resistance falls as capacity grows.`,
    likeLine(found, asked, locale),
    say`Judged by: ${cite(ages, locale)}; ${cite(oddCell, locale)}.`,
  ]
}

function likeLine({ like_ohmAh }: Found, { pack, new: fresh }: HealthAsked, locale: Locale): Text {
  const { say, show, own } = locale
  if (fresh !== undefined)
    return say`Itself: ${show.resistance(fresh)} × ${show.capacity(pack.capacity_Ah)} = ${show.resistance(like_ohmAh.high)} for 1 Ah.`
  const known = likeReadings(pack.chemistry)
  return say`Its like, for 1 Ah: ${show.resistance(known.value.low)} to ${show.resistance(known.value.high)} (${cite(known, locale)}). What yours has when new tells more: note it, and give it as "${own('new')}".`
}
