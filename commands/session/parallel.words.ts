// What is said of packs on one board: whether they may be joined, what flows between them, what to set for all.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { TimedCharge } from '../../src/charging/setting/timed-charge.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { mostApart_V } from '../../src/charging/things/practice.ts'
import { type Board, boardResistance_ohm } from '../../src/charging/upkeep/parallel.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { writePack } from '../../src/language/things/pack.ts'
import { startWords, takesWords } from '../shared/charge.words.ts'
import { ofChargeWords } from '../shared/charging.words.ts'
import { cite, heldDown, menuWords } from '../shared/setting.words.ts'
import type { parallel } from './parallel.ts'

type Joined = Board & TimedCharge & { readonly whole: Pack }

export const parallelWords: WordsOf<typeof parallel> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`May these packs charge on one parallel board, and what to set for them.`,
    asks: [own('may two 3S 850 LiPo at 3.8 V charge on one board')],
    takes: {
      packs: { about: say`the packs with ";" between them, each with its resting volts behind "at"`, as: text => text },
      charger: ofChargeWords(locale).charger,
      source: ofChargeWords(locale).source,
      current: { about: say`for all together; the advised one when not said`, as: text => say`at ${text}` },
    },
    answer: ({ apart_V, packs, setting, current_A, whole, ...timed }) => [
      apart_V === undefined
        ? say`When they rest within ${show.voltage(mostApart_V.value)} a cell of each other, connect them and wait ten minutes.`
        : say`They may share a board, ${fine_V(apart_V, locale)} a cell apart: connect them, wait ten minutes, see that they meet.`,
      say`Then for all ${show.number(packs.length, 0)}: ${menuWords({ ...setting, current_A }, whole, locale)}`,
      say`It takes ${takesWords(timed, locale)}.`,
      ...heldDown(setting, locale),
    ],
    start: ({ whole, apart_V, ...timed }) => startWords(whole, timed, apart_V !== undefined, locale),
    figures: {
      apart: say`apart per cell`,
      equalisingCurrent: say`largest current as they are connected`,
      equalisingCurrentMinute: say`over the first minute`,
      equalisingCurrentLater: say`ten minutes later`,
      setCurrent: say`current to set for all`,
      chargeTime: say`time`,
      cutoffPerCell: say`cutoff per cell`,
      cutoffPack: say`cutoff of the board`,
      boardCapacity: say`capacity together`,
      cRate: say`rate`,
    },
    working: joined => {
      const largest_A = Math.max(...joined.flows.map(({ atOnce_A }) => Math.abs(atOnce_A)))
      return [
        joined.apart_V === undefined
          ? undefined
          : say`Apart: ${fine_V(joined.apart_V, locale)} a cell; ${cite(mostApart_V, locale)}.`,
        ...flowLines(joined, locale),
        ...currentLines(joined, locale),
        joined.flows.length === 0
          ? undefined
          : say`As they are connected up to ${show.current(largest_A)} flows between them.`,
        say`Check before you plug in: cell count and type on every label, volts of every pack, polarity, no swollen or damaged pack, a fused board; the balance plugs last.`,
      ]
    },
  }
}

/** Hundredths hide what decides here. */
const fine_V = (value_V: number, { say, show }: Locale): Text => say`${show.number(value_V, 3)} V`

function flowLines({ packs, flows }: Joined, locale: Locale): readonly Text[] {
  if (flows.length === 0) return []
  const { say, show, own } = locale
  const signed = (current_A: number) =>
    current_A >= 0 ? say`${show.current(current_A)} in` : say`${show.current(-current_A)} out`
  const spread = packs[0]?.chemistry.resistanceSpread
  return [
    ...packs.map((pack, index) => {
      const { atOnce_A = 0, firstMinute_A = 0, later_A = 0 } = flows[index] ?? {}
      return say`Pack ${show.number(index + 1, 0)}, ${own(writePack(pack))}: ${signed(atOnce_A)} as it is connected, ${signed(firstMinute_A)} over the first minute, ${signed(later_A)} after ten.`
    }),
    say`Flow: volts apart ÷ resistances, then followed through the cells' circuit, with the least resistance that they may have: half of the usual (${spread ? cite(spread, locale) : own('')}), three quarters of a measured one; plugs and board ${show.resistance(boardResistance_ohm.value)} (${cite(boardResistance_ohm, locale)}). No pack may take more than it may be charged with over the first minute, or give more than 2C.`,
  ]
}

function currentLines({ packs, setting, whole }: Joined, locale: Locale): readonly Text[] {
  const { say, show } = locale
  const { chemistry, capacity_Ah } = whole
  const { recommendedRate_C, highestRate_C } = chemistry
  const [first, ...others] = packs.map(({ capacity_Ah: one_Ah }) => show.capacity(one_Ah)) as [Text, ...Text[]]
  const sizes = others.reduce((all, one) => say`${all} + ${one}`, first)
  return [
    say`Together: ${sizes} = ${show.capacity(capacity_Ah)}; × ${show.rate(setting.wantedRate_C)} = ${show.current(setting.wanted_A)}.`,
    say`The rate is the lowest that label, chemistry (${show.rate(recommendedRate_C.value)}, ${cite(recommendedRate_C, locale)}) and club leave, and low enough that the others may take it all where the largest pack comes unplugged (${show.rate(highestRate_C.value)} at most, ${cite(highestRate_C, locale)}).`,
  ]
}
