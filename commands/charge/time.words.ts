// What is said of how long a charge takes, and what could be asked next.

import type { WordsOf } from '../../src/assistant/command.ts'
import { countsLead } from '../../src/charging/setting/input.ts'
import type { TimedCharge } from '../../src/charging/setting/timed-charge.ts'
import type { Band } from '../../src/charging/things/chemistry.ts'
import { chargeChart } from '../../src/charts/charge-chart.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { stepped_s } from '../../src/ground/show.ts'
import type { Text } from '../../src/ground/text.ts'
import { limitHolders } from '../../src/handbook/rules/holders.words.ts'
import { stageNames } from '../../src/handbook/stages.words.ts'
import { currentKind, packKind } from '../../src/language/kinds/values.ts'
import { type Clock, clockAfter, writeClock } from '../../src/language/quantities/clock.ts'
import { logWords } from '../log/learned.words.ts'
import { balancerAssumed, chargeWorking, costWords, startWords, takesWords } from '../shared/charge.words.ts'
import { isToStorage } from '../shared/charging.ts'
import { ofChargeWords, stopFigureNames } from '../shared/charging.words.ts'
import { asksAgain } from '../shared/next.ts'
import { leadAssumed, leadWorking, ofLeadWords } from '../shared/own-lead.words.ts'
import { heldDown, houseWorking, menuWords } from '../shared/setting.words.ts'
import { sourceAssumed, sourceWorking } from '../shared/source.words.ts'
import { isLength } from './end-kind.ts'
import { stageKeys, time } from './time.ts'

export const timeWords: WordsOf<typeof time> = locale => {
  const { say, show, own } = locale
  const stages = stageNames(locale)
  return {
    summary: say`How long a charge takes, with its stages and what goes into the pack.`,
    asks: [
      own('how long does a 2S 450 LiPo take at 0.5A'),
      own('when is my 6S 1300 LiPo full from 3.7 V a cell at 1.3A'),
    ],
    takes: {
      ...ofChargeWords(locale),
      ...ofLeadWords(locale),
      from: { about: say`where the pack stands now; its floor when not said`, as: text => say`from ${text}` },
      current: { about: say`set on the charger; the advised one when not said`, as: text => say`at ${text}` },
      or: { about: say`another current, to compare`, as: text => say`or at ${text}` },
      until: {
        about: say`current at which the charge ends, after how long by the charger's clock, or ${own('steps')} where it halves its current; a tenth of the set one when not said`,
        as: text =>
          isLength(`${text}`)
            ? say`ended by its clock after ${text}`
            : `${text}` === 'steps'
              ? say`stepped down at its end`
              : say`until the current is down to ${text}`,
      },
      resistance: { about: say`measured, of one cell`, as: text => say`${text} a cell` },
      capacity: { about: say`measured, of the whole pack`, as: text => say`measured to hold ${text}` },
      balance: { about: say`current of the charger's balancer`, as: text => say`balanced with ${text}` },
      within: { about: say`how long there is; says whether that does`, as: text => say`within ${text}` },
      start: { about: say`the time of day when it starts`, as: text => say`started at ${text}` },
      ready: { about: say`the time of day by which it is wanted`, as: text => say`ready by ${text}` },
      ...logWords(locale),
    },
    answer: (timed, asked) => [
      timed.other ? besideWords(timed, timed.other, locale) : costWords(timed, locale),
      ...endWords(timed.time_s, asked, locale),
      withinWords(timed, locale),
      setWords(timed, locale),
      ...heldDown({ ...timed.setting, bound: undefined }, locale),
    ],
    start: (timed, { from }) => startWords(timed.permit.situation.pack, timed, from !== undefined, locale),
    figures: {
      ...stopFigureNames(locale),
      chargeTime: say`time`,
      otherTime: say`time at the other current`,
      chargeWithin: say`charge in by then`,
      percentWithin: say`charged by then`,
      enoughCurrent: say`enough for that time`,
      timeToCutoff: say`time to the cutoff voltage`,
      [stageKeys.precharge]: stages.precharge,
      [stageKeys['constant current']]: stages['constant current'],
      [stageKeys['constant power']]: stages['constant power'],
      [stageKeys['constant voltage']]: stages['constant voltage'],
      [stageKeys['steps down']]: stages['steps down'],
      [stageKeys.balancing]: stages.balancing,
      setCurrent: say`current set`,
      cRate: say`rate`,
      cutoffPerCell: say`cutoff, a cell`,
      cutoffPack: say`cutoff of the pack`,
      chargeIn: say`charge in`,
      energyIn: say`energy in`,
      heat: say`of it heat in the pack`,
      warmest: say`cells at their warmest`,
      startCharge: say`charged at the start`,
      endCharge: say`charged at the end`,
      peakInputPower: say`input power at most`,
      peakInputCurrent: say`input current at most`,
    },
    working: (timed, asked) => {
      const { situation } = timed.permit
      return [
        ...chargeWorking({ ...timed, pack: situation.pack }, timed, locale),
        ...sourceWorking(situation.source, timed.setting.feed, locale),
        leadWorking(situation.lead, timed.input_A, locale),
        ...houseWorking(situation, timed.setting.cutoff, locale),
        timed.now && asked.start === undefined ? clockWords(timed.time_s, timed.now, locale) : undefined,
      ]
    },
    assumed: ({ from, current_A, balancing, setting: { bound } }, asked) => [
      asked.from === undefined && from.kind === 'rest'
        ? say`the pack is taken to be flown down to its floor, ${show.perCell(from.perCell_V)} a cell at rest`
        : undefined,
      asked.current !== undefined
        ? asked.current === current_A
          ? undefined
          : say`the charger has no step of ${show.current(asked.current)}; ${show.current(current_A)} is taken`
        : typeof bound === 'object'
          ? say`set to the advised current, ${show.current(current_A)}, all that ${limitHolders(locale)[bound.kind]}`
          : { text: say`set to the advised current, ${show.current(current_A)}`, isShown: true },
      balancing && (asked.balance ?? asked.charger?.balance_A) === undefined ? balancerAssumed(locale) : undefined,
      leadAssumed(asked, countsLead(asked.source), locale),
      ...sourceAssumed(asked.source, locale),
    ],
    next: ({ current_A, setting, speaksFirst }, asked) => {
      const again = asksAgain(time.takes, asked)
      return [
        current_A === setting.current_A
          ? undefined
          : again(say`At the advised current`, 'time', { current: currentKind.write(setting.current_A) }),
        isToStorage(asked.to)
          ? again(say`To full`, 'time', { to: 'full' })
          : again(say`To storage`, 'time', { to: 'storage' }),
        speaksFirst
          ? { label: say`Remind me`, question: `remind me for: ${again(own(''), 'time').question}` }
          : undefined,
      ]
    },
    charts: timed => {
      const pack = own(packKind.write(timed.permit.situation.pack))
      const what = say`${pack}, ${show.current(timed.current_A)} to ${goal(timed, locale)}`
      return [chargeChart({ what, charge: timed.charge, end_s: timed.time_s, locale })]
    },
  }
}

type Timed = Parameters<ReturnType<typeof timeWords>['answer']>[0]
type Clocks = Pick<Parameters<ReturnType<typeof timeWords>['answer']>[1], 'start' | 'ready'>

/** What to set; a share of the charge as its end is on no charger's menu. */
function setWords(timed: Timed, locale: Locale): Text {
  const { permit, setting, current_A } = timed
  const { to, pack } = permit.situation
  if (to?.kind !== 'soc') return menuWords({ ...setting, current_A }, pack, locale)
  const { say, show, own } = locale
  return say`${own(`${pack.series}S ${pack.chemistry.name}`)}, ${show.current(current_A)}, unplug it at ${show.percent(to.soc)}.`
}

/** Where the charge ends: as it was asked, or the volts of a cell. */
function goal({ permit, setting }: Timed, { say, show }: Locale): Text {
  const { to } = permit.situation
  return to?.kind === 'soc' ? show.percent(to.soc) : say`${show.perCell(setting.cutoff.perCell_V)} a cell`
}

function besideWords(one: TimedCharge, other: TimedCharge, locale: Locale): Text {
  const { say, show } = locale
  return say`At ${show.current(one.current_A)} it takes ${takesWords(one, locale)}, at ${show.current(other.current_A)} ${takesWords(other, locale)}.`
}

/** What is left of the day, or of the time that there is. */
function endWords({ low, high }: Band, { start, ready }: Clocks, { say, own }: Locale): readonly (Text | undefined)[] {
  const at = (clock: Clock, later_s: number) => own(writeClock(clockAfter(clock, later_s)))
  return [
    start &&
      say`Started at ${at(start, 0)} it ends ${at(start, stepped_s(low, Math.floor))} to ${at(start, stepped_s(high, Math.ceil))}.`,
    ready && !start
      ? say`To be ready by ${at(ready, 0)}, start by ${at(ready, -stepped_s(high, Math.ceil))}.`
      : undefined,
  ]
}

function withinWords({ within, time_s, enough_A }: Timed, { say, show }: Locale): Text | undefined {
  if (!within) return undefined
  const { length_s, soc } = within
  const there = show.duration(length_s)
  if (length_s >= time_s.high)
    return enough_A === undefined
      ? say`That fits into ${there}.`
      : say`That fits into ${there}; so does ${show.current(enough_A)}, most likely, and it is gentler.`
  if (soc === undefined) return say`It may just fit into ${there}.`
  const by = say`after ${there} it is at about ${show.percent(soc)}`
  return length_s > time_s.low ? say`It may not be done by then: ${by}.` : say`It is not done by then: ${by}.`
}

/** When it would end if it started now, by the clock of the machine that answers. */
function clockWords({ low, high }: Band, now: Date, { say, own }: Locale): Text {
  const at = (later_s: number) => {
    const end = new Date(now.getTime() + later_s * 1000)
    return own([end.getHours(), end.getMinutes()].map(part => String(part).padStart(2, '0')).join(':'))
  }
  return say`Started now (${at(0)} by my clock) it would end between ${at(stepped_s(low, Math.floor))} and ${at(stepped_s(high, Math.ceil))}.`
}
