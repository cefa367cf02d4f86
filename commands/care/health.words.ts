// What is said of the age of a pack.

import type { Asked, WordsOf } from '../../src/assistant/command.ts'
import { resistanceFactor } from '../../src/charging/simulation/resistance.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { ages, type Health, likeReadings, oddCell } from '../../src/charging/upkeep/health.ts'
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
    summary: say`The age of a pack by its cell resistance, read or from two loads, and which cell stands out.`,
    asks: [
      own('is a 4S 1500 LiPo with 9 mohm a cell worn out'),
      own('how healthy is a 3S 1300 LiPo with 12 mohm a cell'),
    ],
    takes: {
      pack: ofChargeWords(locale).pack,
      chemistry: { about: say`where no pack is named`, as: text => text },
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
    answer: (found, asked) => [
      found.aged ? ageWords(found.aged, asked, locale) : undefined,
      wholeWords(found, asked, locale),
      cellsWords(found, locale),
      found.aged ? lookWords(found.aged, locale) : usualWords(found, locale),
    ],
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
      pack &&
        followUp(say`How long to charge?`, 'time', {
          pack: packKind.write({ ...pack, cellResistance_ohm: rounded(cell_ohm) }),
        }),
    ],
  }
}

type Found = Parameters<ReturnType<typeof healthWords>['answer']>[0]
type HealthAsked = Asked<(typeof health)['takes']>
const rounded = (ohm: number): number => Number(Math.min(1, Math.max(1e-5, ohm)).toPrecision(3))

function ageWords(found: Health, asked: HealthAsked, locale: Locale): Text {
  const { say, show } = locale
  const measured = say`a cell has ${show.resistance(found.at25C_ohm)} at ${show.temperature(25)}, ${besideWords(found, asked, locale)}`
  switch (found.age) {
    case 'as its like':
      return say`As its like: ${measured}.`
    case 'aged':
      return say`The pack has aged, and will sag and warm more: ${measured}.`
    case 'tired':
      return say`The pack is tired: ${measured}.`
    case 'worn out':
      return say`The pack is worn out: ${measured}.`
  }
}

function besideWords(
  { at25C_ohmAh, like_ohmAh, times }: Health,
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

/** Of two loads: what all cells have together. */
function wholeWords({ cell_ohm, series = 1, aged }: Found, { one }: HealthAsked, { say, show }: Locale) {
  if (!one) return undefined
  const whole = say`The pack has ${show.resistance(cell_ohm * series)} in all, with its plugs and leads`
  return series > 1 && !aged ? say`${whole}: ${show.resistance(cell_ohm)} a cell.` : say`${whole}.`
}

function cellsWords({ worst, aged, cells_ohm }: Found, { say, show }: Locale): Text | undefined {
  if (worst?.odd !== undefined) {
    const odd = say`Cell ${show.number(worst.odd + 1, 0)} stands out with ${show.resistance(worst.ohm)}`
    return aged
      ? say`${odd}.`
      : say`${odd}, ${show.number(worst.times, 1)} times the middle one: it ages ahead of the others.`
  }
  return worst && !aged
    ? say`The cells are alike, ${show.resistance(Math.min(...cells_ohm))} to ${show.resistance(worst.ohm)}: none stands out.`
    : undefined
}

/** Without a capacity. */
const usualWords = ({ worst, like }: Found, { say, show }: Locale): Text | undefined =>
  worst
    ? undefined
    : say`Whether that is much hangs on the capacity: published cells show ${show.resistance(like.value.low)} to ${show.resistance(like.value.high)} divided by their Ah, packs made for high discharge less.`

/** Resistance is not all. */
const lookWords = ({ age }: Health, { say }: Locale): Text | undefined =>
  age === 'as its like' || age === 'aged'
    ? say`Swollen, dented or losing charge at rest it is retired whatever it reads.`
    : undefined

function working(found: Found, asked: HealthAsked, locale: Locale): readonly (Text | undefined)[] {
  const { say, show, own } = locale
  const { pack, one, other, resistance, temperature = 25 } = asked
  const { aged } = found
  return [
    resistance || !one || !other
      ? undefined
      : say`From the loads: (${show.voltage(one.pack_V)} − ${show.voltage(other.pack_V)}) ÷ (${show.current(other.current_A)} − ${show.current(one.current_A)}) ÷ ${own(String(found.series ?? 1))} = ${show.resistance(found.cell_ohm)} a cell, with its share of plugs and leads.`,
    found.cells_ohm.length > 1
      ? say`Mean of ${show.number(found.cells_ohm.length, 0)} cells: ${show.resistance(found.cell_ohm)}.`
      : undefined,
    ...(aged && pack
      ? [
          say`At ${show.temperature(25)}: ${show.resistance(found.cell_ohm)} ÷ ${show.number(resistanceFactor(temperature), 2)} = ${show.resistance(aged.at25C_ohm)} (resistance against temperature: two published production battery tables).`,
          say`For 1 Ah: × ${show.capacity(pack.capacity_Ah)} = ${show.resistance(aged.at25C_ohmAh)}; resistance falls as capacity grows.`,
          likeLine(aged, pack, asked, locale),
        ]
      : [say`Its like, for 1 Ah: up to ${show.resistance(found.like.value.high)} (${cite(found.like, locale)}).`]),
    say`Judged by: ${cite(ages, locale)}; ${cite(oddCell, locale)}.`,
  ]
}

function likeLine({ like_ohmAh }: Health, pack: Pack, { new: fresh }: HealthAsked, locale: Locale): Text {
  const { say, show, own } = locale
  if (fresh !== undefined)
    return say`Itself: ${show.resistance(fresh)} × ${show.capacity(pack.capacity_Ah)} = ${show.resistance(like_ohmAh.high)} for 1 Ah.`
  const known = likeReadings(pack)
  return say`Its like, for 1 Ah: ${show.resistance(known.value.low)} to ${show.resistance(known.value.high)} (${cite(known, locale)}). What yours has when new tells more: note it, and give it as "${own('new')}".`
}
