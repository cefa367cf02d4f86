// What is said of a plan on a source, and what could be asked next.

import type { WordsOf } from '../../src/assistant/command.ts'
import { countsLead } from '../../src/charging/setting/input.ts'
import { countedPacks } from '../../src/charging/simulation/supply-run.ts'
import { otherSpread } from '../../src/charging/sources/source-plan.ts'
import { chargerEfficiencies, chargerEfficiency, efficienciesOf } from '../../src/charging/things/practice.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { countKind } from '../../src/language/kinds/values.ts'
import { logWords } from '../log/learned.words.ts'
import { isToStorage } from '../shared/charging.ts'
import { ofChargeWords } from '../shared/charging.words.ts'
import { asksAgain } from '../shared/next.ts'
import { leadAssumed, leadWorking, ofLeadWords } from '../shared/own-lead.words.ts'
import { cite, heldDown, houseWorking, inputWorking, menuWords, settingWorking } from '../shared/setting.words.ts'
import { sourceAssumed, sourceWorking } from '../shared/source.words.ts'
import { type Counted, source } from './source.ts'
import { drainPictures, sizeWords, sizeWorking } from './source-more.words.ts'

export const sourceWords: WordsOf<typeof source> = locale => {
  const { say, show, own } = locale
  const { charger, from, to, temperature, apart } = ofChargeWords(locale)
  return {
    summary: say`How many packs a source charges and where to stop, or how large a source so many packs need.`,
    asks: [
      own('how many 3S 720 LiHV can a 4S 5000 Li-ion charge'),
      own('can a car with a 10A fuse charge 6 of my 4S 1500 LiPo'),
    ],
    takes: {
      source: { about: say`a supply, a vehicle outlet, a power bank or a battery`, as: text => text },
      pack: { about: say`the packs to charge, all alike`, as: text => say`for ${text}` },
      charger,
      from: { ...from, about: say`where the packs stand now; their floor when not said` },
      to: { ...to, about: say`where they are to go; full when not said` },
      count: {
        about: say`how many packs; as many as the source carries when not said`,
        as: text => say`${text} of them`,
      },
      time: { about: say`how long there is, or the sun shines`, as: text => say`in ${text}` },
      charged: {
        about: say`how full the source battery is; full when not said`,
        as: text => say`the source at ${text}`,
      },
      leave: {
        about: say`how full the source battery is to stay; down to its floor when not said`,
        as: text => say`with ${text} left in it`,
      },
      temperature,
      apart,
      ...ofLeadWords(locale),
      ...logWords(locale),
    },
    answer: plan =>
      plan.kind === 'size'
        ? sizeWords(plan, locale)
        : [
            carriedWords(plan, locale),
            menuWords(plan.setting, plan.permit.situation.pack, locale),
            stopWords(plan, locale),
            ...heldDown(plan.setting, locale),
          ],
    figures: {
      packCount: say`packs`,
      inTime: say`packs in the time at hand`,
      perHour: say`packs an hour in good sun`,
      chargeTime: say`time for one pack`,
      totalTime: (_, plan) => say`time for ${show.number(plan.kind === 'plan' ? plan.planned : plan.count, 0)}`,
      stopVoltage: say`stop the source at`,
      stopPerCell: say`per cell of the source`,
      stopAtRest: say`or where it rests at`,
      sourceEnergyLeft: say`still to be had from the source`,
      sourceChargeLeft: say`charge left in the source`,
      sourceEnergyOut: say`out of the source`,
      packEnergy: say`into the packs`,
      converterLoss: say`lost in the charger`,
      sourceLoss: say`lost in the source`,
      setCurrent: say`current to set`,
      cutoffPerCell: say`cutoff, a cell`,
      inputPower: say`input power at most`,
      inputCurrent: say`input current at most`,
      inputEnergy: say`into the charger, for all`,
      station: say`power bank or power station, on its label`,
      deepCycle: say`leisure battery of 12 V, on its label`,
      starter: say`starter battery of 12 V, on its label`,
    },
    working: (plan, { source: feeding, pack: charged }) => [
      ...(plan.kind === 'plan' ? planWorking(plan, locale) : sizeWorking(plan, locale)),
      ...sourceWorking(feeding, plan.setting.feed, locale),
      leadWorking(plan.permit.situation.lead, plan.setting.input_A, locale),
      ...settingWorking(plan.setting, charged, locale),
      inputWorking(plan.setting, locale),
      ...houseWorking(plan.permit.situation, plan.setting.cutoff, locale),
    ],
    assumed: ({ from: start, setting }, asked) => [
      asked.from === undefined && start.kind === 'rest'
        ? say`the packs are taken to be flown down to their floor, ${show.perCell(start.perCell_V)} a cell at rest`
        : undefined,
      asked.charger === undefined
        ? say`the charger is taken to pass on ${show.percent(setting.efficiency)} of its input, at any current and input voltage`
        : undefined,
      asked.source?.kind === 'battery' && asked.charged === undefined
        ? say`the source battery is taken to be full and to hold what its label says`
        : undefined,
      leadAssumed(asked, countsLead(asked.source), locale),
      ...sourceAssumed(asked.source, locale, asked.charged),
    ],
    next: (plan, asked) => {
      const again = asksAgain(source.takes, asked)
      const most = plan.kind === 'plan' ? plan.most : undefined
      return [
        most && plan.kind === 'plan' && !plan.enough
          ? again(say`Only ${show.number(most, 0)}`, 'source', { count: countKind.write(most) })
          : undefined,
        asked.count !== undefined && most !== undefined
          ? again(say`How many at most?`, 'source', { count: undefined })
          : undefined,
        isToStorage(asked.to)
          ? again(say`To full`, 'source', { to: 'full' })
          : again(say`To storage`, 'source', { to: 'storage' }),
      ]
    },
    charts: plan => (plan.kind === 'plan' ? drainPictures(plan, locale) : []),
  }
}

/** How many packs it carries, and how long that takes; where it does not carry all, that has been said before. */
function carriedWords(plan: Counted, locale: Locale): Text {
  const { most, planned, enough, each, count, inTime, perHour, between, left_Wh = 0 } = plan
  const { say, show } = locale
  const one = show.roughly(each.charge.duration_s)
  const all = show.roughly(planned * each.charge.duration_s)
  if (perHour !== undefined) return sunWords(perHour, one, count, inTime, locale)
  if (inTime !== undefined)
    return say`In that time it charges ${show.number(inTime, 0)}, one after another: about ${one} each.`
  const inTurn = planned > 1 ? say`, one after another,` : say``
  if (most === undefined || !between) {
    if (count === undefined) return say`Yes: it carries one pack after another, about ${one} each.`
    return count === 1
      ? say`Yes: it carries the pack in about ${all}.`
      : say`Yes: it carries all ${show.number(count, 0)}${inTurn} in about ${all}.`
  }
  const packs = (number: number): Text => (number === 1 ? say`1 pack` : say`${show.number(number, 0)} packs`)
  const maybe = between.high > between.low ? say`, maybe ${show.number(between.high, 0)}` : say``
  const isEndless = most >= countedPacks
  if (count === undefined) {
    if (between.low === 0)
      return say`Just about: it charges ${packs(planned)}${inTurn} in about ${all} where it loses no more than is usual; none is sure.`
    return isEndless
      ? say`It charges at least ${packs(most)}${inTurn} in about ${all}.`
      : say`It charges ${packs(between.low)}${maybe}${inTurn} in about ${all}.`
  }
  if (!enough)
    return planned === 1 ? say`That one takes about ${all}.` : say`Those take about ${all}, one after another.`
  if (count > between.low) {
    const sure = between.low === 0 ? say`none is sure` : say`${show.number(between.low, 0)} are sure`
    return say`Just about: it charges ${packs(count)}${inTurn} in about ${all} where it loses no more than is usual; ${sure}.`
  }
  const atMost = isEndless
    ? say`at least ${show.number(most, 0)}`
    : between.high > between.low
      ? say`${show.number(between.low, 0)} to ${show.number(between.high, 0)}`
      : show.number(most, 0)
  const stays = show.energy(Math.max(0, Math.floor(left_Wh)))
  return say`Yes: it charges ${packs(count)}${inTurn} in about ${all}; about ${stays} are left to take, enough for ${atMost} in all.`
}

/** What a panel feeds while the sun shines on it. */
function sunWords(
  perHour: number,
  one: Text,
  count: number | undefined,
  inTime: number | undefined,
  { say, show }: Locale,
): Text {
  const rate = say`In good sun it feeds about ${show.number(Number(perHour.toPrecision(2)), 1)} packs an hour, into a battery or a power station that charges them at about ${one} each`
  if (inTime !== undefined) return say`${rate}: about ${show.number(inTime, 0)} in that time.`
  return count === undefined
    ? say`${rate}.`
    : say`${rate}: ${show.number(count, 0)} of them take about ${show.roughly((count / perHour) * 3600)} of sun.`
}

/** Where to stop, for a source that can be harmed by being drained. */
function stopWords({ setting, permit }: Counted, { say, show }: Locale): Text | undefined {
  const store = setting.feed?.store
  const { source: feeding } = permit.situation
  if (!store) return undefined
  const load = show.voltage(store.loadFloor_V)
  if (feeding?.kind !== 'battery') {
    // Read off in tenths; the next one up is the safe one.
    const rest = show.voltage(Math.ceil(store.restFloor_V * 10 - 1e-6) / 10)
    return say`Stop where the lead battery rests at ${rest}, or shows ${load} at its poles under load.`
  }
  const perCell = show.perCell(store.loadFloor_V / feeding.pack.series)
  return store.restFloor_V > store.loadFloor_V
    ? say`Stop the source at ${load} under load (${perCell} a cell), or where it rests at ${show.voltage(store.restFloor_V)}.`
    : say`Stop the source at ${load} under load (${perCell} a cell).`
}

/** The energies of one pack and of all, and that they add up. */
function planWorking(
  { setting, each, planned, balance, between, permit }: Counted,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show } = locale
  const { energy_Wh } = each.charge
  const { efficiency } = setting
  const { low, high } = efficienciesOf(permit.situation.charger)
  const rule = efficiency === chargerEfficiency.value ? cite(chargerEfficiency, locale) : say`efficiency of the charger`
  return [
    say`One pack: ${show.energy(energy_Wh)} ÷ ${show.number(efficiency, 2)} = ${show.energy(energy_Wh / efficiency)} at the charger's input (${rule}).`,
    say`Energy for ${show.number(planned, 0)}: out of the source ${show.energy(balance.sourceOut_Wh)} = into the packs ${show.energy(balance.intoPacks_Wh)} + lost in the charger ${show.energy(balance.converterLoss_Wh)} + lost in the source ${show.energy(balance.sourceLoss_Wh)}.`,
    between && between.high > between.low
      ? say`Sure and at best: the charger passes on ${show.percent(low)} and ${show.percent(high)}; ${cite(otherSpread, locale)} (${cite(chargerEfficiencies, locale)}).`
      : undefined,
    say`Times count the charges only, not the swapping of packs.`,
  ]
}
