// What is said of a session plan: how many are ready when, what to start with, and who is left out.

import type { WordsOf } from '../../src/assistant/command.ts'
import { sumOf } from '../../src/charging/numbers/sum.ts'
import { countsLead } from '../../src/charging/setting/input.ts'
import { planChart } from '../../src/charts/plan-chart.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { stepped_s } from '../../src/ground/show.ts'
import type { Text } from '../../src/ground/text.ts'
import { type Clock, clockAfter, writeClock } from '../../src/language/quantities/clock.ts'
import { logWords } from '../log/learned.words.ts'
import { ofChargeWords } from '../shared/charging.words.ts'
import { asksAgain } from '../shared/next.ts'
import { leadAssumed, leadWorking, ofLeadWords } from '../shared/own-lead.words.ts'
import { sourceAssumed } from '../shared/source.words.ts'
import { type Planned, plan } from './plan.ts'
import * as said from './session.words.ts'

export const planWords: WordsOf<typeof plan> = locale => {
  const { say, show, own } = locale
  const sourceName = (of: number, { field }: Planned) => said.namesIn(field, locale).source(of - 1)
  return {
    summary: say`A field session: the order, charger, setting and times for a bag of packs.`,
    asks: [
      own('plan four 3S 720 LiHV on two 0.1-5A chargers'),
      own('plan six 2S 450 LiPo on one 0.1-5A charger by 18:00'),
    ],
    takes: {
      packs: {
        about: say`the packs, with ";" between them, "4x" before four alike, behind them "at 3.7V" or "at 20%" and "at 1.3A" where that is to be set`,
        as: text => text,
      },
      chargers: {
        about: say`the chargers, with ";" between them; one with two outputs is written "2x"; one that gives each pack what it may take when not said`,
        as: text => say`on ${text}`,
      },
      ports: {
        about: say`outputs that share the watts of one charger, or packs at once where no charger is told`,
        as: text => say`${text} at once`,
      },
      sources: { about: say`what feeds the chargers, with ";" between them`, as: text => say`fed by ${text}` },
      by: { about: say`the time from now by which they must be ready`, as: text => say`ready within ${text}` },
      start: { about: say`the time of day when the first may start`, as: text => say`starting at ${text}` },
      ready: { about: say`the time of day by which they must be ready`, as: text => say`ready by ${text}` },
      flights: { about: say`how many packs are wanted ready; all when not said`, as: text => say`for ${text} flights` },
      temperature: { about: say`of the cells; a room when not said`, as: text => say`cells at ${text}` },
      apart: ofChargeWords(locale).apart,
      ...ofLeadWords(locale),
      ...logWords(locale),
    },
    answer: (planned, asked) => {
      const lines = planned.charges.length === 0 ? withoutCharges(planned, locale) : withCharges(planned, asked, locale)
      return [...lines, ...said.neverWords(planned, planned.field, locale)]
    },
    figures: {
      packsReady: say`packs ready`,
      packsLeft: say`packs not charged`,
      outputPower: say`into the packs at once, at most`,
      firstReady: say`first pack ready after`,
      lastReady: say`last pack ready after`,
      meanWait: say`ready on average after`,
      'source#Power': (of, planned) => say`${sourceName(of, planned)}: drawn at once, at most`,
      'source#Energy': (of, planned) => say`${sourceName(of, planned)}: taken, at most`,
      'source#Left': (of, planned) => say`${sourceName(of, planned)}: left above its floor, at least`,
    },
    working: planned => {
      const { field, charges } = planned
      const names = said.namesIn(field, locale)
      return [
        ...charges.map(charge => said.chargeLine(charge, names, locale)),
        ...said.leftLines(planned, field, locale),
        ...said.sourceLines(planned, names, locale),
        leadWorking(field.lead, undefined, locale),
        ...said.chargerLines(field, locale),
        say`Each charge counts with the long end of its time, and a minute to look at the pack, feel it and connect it (common practice); one that has just flown cools down before its turn.`,
        say`Each charger stays on one source and within its share of that power through the session, so that a charge which ends early or late overloads nothing.`,
        charges.length > 0 ? said.provenWords(planned, locale) : undefined,
      ]
    },
    assumed: ({ field, fullAlready }, asked) => {
      const { packs, flights = 0 } = asked
      const total = sumOf(field.packs.map(({ count }) => count))
      const { sources, chargers } = field
      return [
        asked.chargers !== undefined
          ? undefined
          : chargers.length === 1
            ? say`no charger was told: one that gives each pack what it may take, one after the other`
            : say`no charger was told: each of these outputs gives its pack what it may take`,
        packs.some(({ item }) => item.from === undefined && item.dangers === undefined)
          ? say`packs without a state are taken to be flown down to their floor`
          : undefined,
        sources.length === 0 ? say`each charger is taken to get the power that it asks for` : undefined,
        sources.length > 0 && chargers.length > 1
          ? say`each source is taken to have a plug for every charger`
          : undefined,
        flights > total
          ? say`each pack counts for one flight; the other ${show.number(flights - total, 0)} need a pack charged again after it has flown and cooled`
          : undefined,
        sumOf(fullAlready) > 0 ? say`packs charged to 99 % or more count as full` : undefined,
        leadAssumed(
          asked,
          sources.some(({ source }) => countsLead(source)),
          locale,
        ),
        ...new Set(sources.flatMap(({ source }) => sourceAssumed(source, locale))),
      ]
    },
    next: ({ left, field }, asked) => {
      const again = asksAgain(plan.takes, asked)
      return [
        field.readyBy_s !== undefined && left.some(({ why }) => why.kind === 'time')
          ? again(say`Without the time`, 'plan', { by: undefined, ready: undefined })
          : undefined,
        asked.flights === undefined ? undefined : again(say`All packs`, 'plan', { flights: undefined }),
      ]
    },
    charts: ({ charges, field }) => {
      if (charges.length === 0) return []
      const names = said.namesIn(field, locale)
      const rows = charges.map(charge => ({
        pack: names.pack(charge.group, charge.number),
        port: names.port(charge.port),
        setting: said.settingText(charge, locale),
        start_s: charge.start_s,
        end_s: charge.end_s,
      }))
      return [planChart({ charges: rows, readyBy_s: field.readyBy_s, locale })]
    },
  }
}

type Clocks = Pick<Parameters<ReturnType<typeof planWords>['answer']>[1], 'start' | 'ready'>

const wantedOf = ({ field: { flights = Number.POSITIVE_INFINITY, packs } }: Planned): number =>
  Math.min(flights, sumOf(packs.map(({ count }) => count)))
const packsWords = (count: number, { say, show }: Locale): Text =>
  count === 1 ? say`1 pack` : say`${show.number(count, 0)} packs`

function withoutCharges(planned: Planned, locale: Locale): readonly (Text | undefined)[] {
  const { say, show } = locale
  const { ready, left, field } = planned
  if (ready >= wantedOf(planned))
    return [
      ready === 1
        ? say`Nothing to charge: 1 pack is full already.`
        : say`Nothing to charge: ${packsWords(ready, locale)} are full already.`,
    ]
  const full =
    ready === 0
      ? undefined
      : ready === 1
        ? say`1 pack is full already.`
        : say`${packsWords(ready, locale)} are full already.`
  const tooLate = left.every(({ why: { kind } }) => kind === 'time' || kind === 'never')
  return tooLate && field.readyBy_s !== undefined && left.some(({ why }) => why.kind === 'time')
    ? [full, say`No pack can be charged within the ${show.duration(field.readyBy_s)}.`]
    : [
        full,
        ready === 0 ? say`No pack can be charged here.` : say`No other can be charged here.`,
        said.leftWords(planned, locale),
      ]
}

function withCharges(
  planned: Planned,
  { start, ready: wantedBy }: Clocks,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show, own } = locale
  const { charges, ready, pace, field } = planned
  const wanted = wantedOf(planned)
  const last_s = Math.max(...charges.map(({ end_s: one_s }) => one_s))
  // What is ready within a time is not said to be ready after it.
  const end_s = Math.min(stepped_s(last_s, Math.ceil), Math.max(last_s, field.readyBy_s ?? Number.POSITIVE_INFINITY))
  const at = (clock: Clock, later_s: number) => own(writeClock(clockAfter(clock, later_s)))
  const isToday = end_s < 24 * 3600
  const after =
    start && isToday
      ? say`ready after ${show.duration(end_s)}, at ${at(start, end_s)}`
      : say`ready after ${show.duration(end_s)}`
  const result = field.readyBy_s === undefined ? after : say`${after}, within the ${show.duration(field.readyBy_s)}`
  return [
    ready < wanted
      ? ready === 1
        ? say`Not all: 1 of ${packsWords(wanted, locale)} is ${result}.`
        : say`Not all: ${show.number(ready, 0)} of ${packsWords(wanted, locale)} are ${result}.`
      : wanted === 1
        ? say`The pack is ${result}.`
        : wanted === 2
          ? say`Both packs are ${result}.`
          : say`All ${packsWords(wanted, locale)} are ${result}.`,
    sharedWords(planned, locale),
    wantedBy && !start && isToday
      ? say`To have them by ${at(wantedBy, 0)}, start by ${at(wantedBy, -end_s)}.`
      : undefined,
    ...said.startLines(planned, field, locale),
    pace === 'hurried' ? say`To make the time, currents are above the usual ones.` : undefined,
    said.leftWords(planned, locale),
  ]
}

/** Whether the outputs that share the watts of a charger may all run as wanted. */
function sharedWords({ field, output_W, share_W }: Planned, { say, show }: Locale): Text | undefined {
  if (field.shared_W === undefined) return undefined
  const [taken, shared] = [show.power(output_W), show.power(field.shared_W)]
  return share_W === undefined
    ? say`Yes, at once: together they take ${taken} of the ${shared} that the outputs share.`
    : say`Not all at once like that: together ${taken}, and the outputs share ${shared}. Each gets ${show.power(share_W)}.`
}
