// What is said of packs on one board: whether they may be joined, what flows between them, what to set for all.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { Limit } from '../../src/charging/setting/limit.ts'
import type { Room } from '../../src/charging/setting/shared-charger.ts'
import type { TimedCharge } from '../../src/charging/setting/timed-charge.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { mostApart_V } from '../../src/charging/things/practice.ts'
import { type Board, boardResistance_ohm } from '../../src/charging/upkeep/parallel.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { limitHolders } from '../../src/handbook/rules/holders.words.ts'
import { writePack } from '../../src/language/things/pack.ts'
import { startWords, takesWords } from '../shared/charge.words.ts'
import { ofChargeWords } from '../shared/charging.words.ts'
import { cite, heldDown, menuWords } from '../shared/setting.words.ts'
import type { parallel } from './parallel.ts'

interface Shared {
  readonly whole: Pack
  readonly count: number
  readonly each_A: number
  readonly power_W: number
  /** What was asked for all, or is advised. */
  readonly wanted_A: number
  readonly held: Limit | undefined
  readonly room: Room | undefined
  /** How many packs it takes is what was asked. */
  readonly isSought: boolean
  readonly rounds: number
}
type Joined = Board & TimedCharge & Shared

export const parallelWords: WordsOf<typeof parallel> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Packs on one parallel board: may they share it, what to set, how many the charger takes at once.`,
    asks: [
      own('may two 3S 850 LiPo at 3.8 V charge on one board'),
      own('how many 6S 1050 LiPo fit on a board at 1C with my 180W charger'),
    ],
    takes: {
      packs: {
        about: say`the packs with ";" between them, each with its resting volts behind "at"; one with a charger asks for how many it is enough`,
        as: text => text,
      },
      charger: ofChargeWords(locale).charger,
      source: ofChargeWords(locale).source,
      places: { about: say`how many packs the board holds at once`, as: text => say`${text} at a time` },
      boards: { about: say`how many such boards charge at once`, as: text => say`${text} boards` },
      current: {
        about: say`for all together, as a rate, or behind it "each"; the advised one when not said`,
        as: text => say`at ${text}`,
      },
    },
    answer: ({ apart_V, setting, current_A, whole, ...more }) => [
      more.isSought ? roomWords({ ...more, current_A }, locale) : undefined,
      joined([
        apart_V === undefined || more.isSought ? undefined : matchWords(apart_V, locale),
        say`For all ${show.number(more.count, 0)}: ${menuWords({ ...setting, current_A }, whole, locale)}`,
      ]),
      shareWords({ ...more, current_A }, whole, locale),
      say`It takes ${takesWords(more, locale)}.`,
      more.rounds > 1 ? roundsWords(more, locale) : undefined,
      ...heldDown({ ...setting, bound: more.held ? undefined : setting.bound }, locale),
      apart_V === undefined
        ? say`Within ${show.voltage(mostApart_V.value)} a cell connect them, then wait ten minutes.`
        : say`Connect them and wait ten minutes.`,
    ],
    start: ({ whole, apart_V, ...timed }) => startWords(whole, timed, apart_V !== undefined, locale),
    figures: {
      atOnce: say`packs at once`,
      apart: say`apart, a cell`,
      equalisingCurrent: say`largest current as they are connected`,
      equalisingCurrentMinute: say`over the first minute`,
      equalisingCurrentLater: say`ten minutes later`,
      setCurrent: say`current to set for all`,
      eachCurrent: say`for each`,
      boardPower: say`power into all at full`,
      chargeTime: say`time`,
      totalTime: say`time of all rounds`,
      cutoffPerCell: say`cutoff, a cell`,
      cutoffPack: say`cutoff of the board`,
      boardCapacity: say`capacity together`,
      cRate: say`rate`,
    },
    working: board => {
      const largest_A = Math.max(...board.flows.map(({ atOnce_A }) => Math.abs(atOnce_A)))
      return [
        board.apart_V === undefined
          ? undefined
          : say`Apart: ${fine_V(board.apart_V, locale)} a cell; ${cite(mostApart_V, locale)}. Once connected they must meet within ten minutes, else charge them one by one.`,
        ...flowLines(board, locale),
        ...currentLines(board, locale),
        board.flows.length === 0
          ? undefined
          : say`As they are connected up to ${show.current(largest_A)} flows between them.`,
        say`Check before you plug in: cell count and type on every label, volts of every pack, polarity, no swollen or damaged pack, a fused board; the balance plugs last.`,
      ]
    },
  }
}

type Spread = Omit<Shared, 'whole'> & Pick<TimedCharge, 'current_A'>

/** "7 fit at 1.1 A each. 8 would be 8.8 A, 222 W: more than the charger's power allows; each then gets 1 A." */
function roomWords({ room, count, power_W, current_A }: Spread, locale: Locale): Text | undefined {
  const { say, show } = locale
  if (!room) return undefined
  const { each_A, limit } = room
  const most = Math.min(count, room.count)
  const next = most + 1
  const fit =
    most === 0
      ? say`None fits at ${show.current(each_A)}.`
      : most === 1
        ? say`1 fits at ${show.current(each_A)}.`
        : say`${show.number(most, 0)} fit at ${show.current(each_A)} each.`
  if (next * each_A <= limit.value_A) return say`${fit} Charger and source would carry more.`
  const volts_V = power_W / current_A
  return say`${fit} ${show.number(next, 0)} would take ${show.current(next * each_A)}, ${show.power(next * each_A * volts_V)}: more than ${limitHolders(locale)[limit.kind]}, which leaves ${show.current(Math.floor((limit.value_A / next) * 100) / 100)} a pack.`
}

/** What each gets and what all take, and which limit of charger or source keeps it from what was wanted. */
function shareWords({ each_A, power_W, held, current_A }: Spread, whole: Pack, locale: Locale): Text {
  const { say, show } = locale
  const share = say`Each gets ${show.current(each_A)} (${show.rate(current_A / whole.capacity_Ah)}), ${show.power(power_W)} at the end`
  return held ? say`${share}: all that ${limitHolders(locale)[held.kind]}.` : say`${share}.`
}

function roundsWords(
  { rounds, charge, time_s }: Pick<Joined, 'rounds' | 'charge' | 'time_s'>,
  { say, show }: Locale,
): Text {
  return say`In ${show.number(rounds, 0)} rounds: about ${show.roughly(rounds * charge.duration_s)} in all, ${show.roughly(rounds * time_s.high, Math.ceil)} at most, and the waits between.`
}

const matchWords = (apart_V: number, locale: Locale): Text =>
  apart_V === 0 ? locale.say`Yes, they match.` : locale.say`Yes, they match (${fine_V(apart_V, locale)} a cell apart).`

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

function currentLines({ packs, setting, whole, held, ...more }: Joined, locale: Locale): readonly Text[] {
  const { say, show } = locale
  const { chemistry, capacity_Ah } = whole
  const { recommendedRate_C, highestRate_C } = chemistry
  const [first, ...others] = packs.map(({ capacity_Ah: one_Ah }) => show.capacity(one_Ah)) as [Text, ...Text[]]
  const sizes = others.reduce((all, one) => say`${all} + ${one}`, first)
  const asWanted_W = (more.power_W / more.current_A) * more.wanted_A
  return [
    ...(held ? [say`${show.current(more.wanted_A)} would take ${show.power(asWanted_W)}.`] : []),
    say`Together: ${sizes} = ${show.capacity(capacity_Ah)}; × ${show.rate(setting.wantedRate_C)} = ${show.current(setting.wanted_A)}.`,
    say`The rate is the lowest that label, chemistry (${show.rate(recommendedRate_C.value)}, ${cite(recommendedRate_C, locale)}) and club leave, and low enough that the others may take it all where the largest pack comes unplugged (${show.rate(highestRate_C.value)} at most, ${cite(highestRate_C, locale)}).`,
  ]
}
