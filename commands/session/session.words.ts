// The words of a session plan: who is charged where and when, who is left out and why, and what each source gives.

import type {
  FieldPlan,
  FieldSession,
  LeftPacks,
  PackGroup,
  PlannedCharge,
  WhyLeft,
} from '../../src/charging/plan/field.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { present } from '../../src/ground/present.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { limitHolders } from '../../src/handbook/rules/holders.words.ts'
import { linesOf } from '../../src/handbook/rules/index.ts'
import { writeCharger } from '../../src/language/things/charger.ts'
import { writePack } from '../../src/language/things/pack.ts'
import { writeSource } from '../../src/language/things/source.ts'

/** The names under which a reply speaks of packs, chargers and sources. */
interface SessionNames {
  pack(group: number, number: number): Text
  port(port: number): Text
  source(source: number): Text
}

/** Packs of one label are numbered through, whatever state they are in. */
export function namesIn({ packs, sources }: FieldSession, { say, show, own }: Locale): SessionNames {
  const labels = packs.map(({ pack }) => writePack(pack))
  const alikeAmong = (group: number, groups: readonly PackGroup[]) =>
    groups.reduce((sum, { count }, other) => (labels[other] === labels[group] ? sum + count : sum), 0)
  const fed = sources.map(({ source }) => writeSource(source))
  return {
    pack: (group, number) => {
      const label = labels[group] ?? ''
      const before = alikeAmong(group, packs.slice(0, group))
      return own(alikeAmong(group, packs) > 1 ? `${label} #${before + number}` : label)
    },
    port: port => say`charger ${show.number(port + 1, 0)}`,
    source: source => {
      const name = own(fed[source] ?? '')
      const twins = fed.filter(text => text === fed[source]).length
      return twins > 1 ? say`${name} (source ${show.number(source + 1, 0)})` : name
    },
  }
}

export const settingText = ({ setting }: PlannedCharge, { say, show }: Locale): Text =>
  say`${show.current(setting.current_A)} to ${show.perCell(setting.cutoff.perCell_V)}`

/** "Start to 52 min: 3S 720mAh LiHV #1 on charger 1, fed by PD 65W. Set 1 A and 4.35 V per cell." */
export function chargeLine(charge: PlannedCharge, names: SessionNames, locale: Locale): Text {
  const { say, show } = locale
  const { group, number, port, source, setting, start_s, end_s } = charge
  const { current_A, rate_C, bound, cutoff, wanted_A } = setting
  const place = source === undefined ? names.port(port) : say`${names.port(port)}, fed by ${names.source(source)}`
  const set =
    current_A > 1.1 * wanted_A ? say`${show.current(current_A)} (${show.rate(rate_C)})` : show.current(current_A)
  const begin = start_s === 0 ? say`Start` : show.roughly(start_s)
  const line = say`${begin} to ${show.roughly(end_s, Math.ceil)}: ${names.pack(group, number)} on ${place}. Set ${set} and ${show.perCell(cutoff.perCell_V)} a cell`
  return typeof bound === 'object' ? say`${line} (all that ${limitHolders(locale)[bound.kind]}).` : say`${line}.`
}

/** "Start with 3S 720mAh LiHV #1 on charger 1 at 1 A to 4.35 V a cell.", several that are set alike in one; then those of other kinds. */
export function startLines({ charges }: FieldPlan, session: FieldSession, locale: Locale): readonly Text[] {
  const { say, show, own } = locale
  const names = namesIn(session, locale)
  const kindOf = (one: PlannedCharge) => `${one.group} ${settingText(one, locale)}`
  const { atOnce = [], later = [] } = Object.groupBy(charges, one => (one.start_s === 0 ? 'atOnce' : 'later'))
  const started = new Set(atOnce.map(({ group }) => group))
  const rows = (of: readonly PlannedCharge[], isPlaced: boolean) =>
    [...Map.groupBy(of, kindOf).values()].map(([one, ...others]) => {
      const { group, number, port } = one as PlannedCharge
      const alike = own(`${others.length + 1}x ${writePack((session.packs[group] as PackGroup).pack)}`)
      const what = others.length === 0 ? names.pack(group, number) : alike
      const ports = others.reduce(
        (all, other) => say`${all}, ${show.number(other.port + 1, 0)}`,
        others.length === 0 ? names.port(port) : say`chargers ${show.number(port + 1, 0)}`,
      )
      const set = say`at ${settingText(one as PlannedCharge, locale)} a cell`
      return isPlaced ? say`${what} on ${ports} ${set}` : say`${what} ${set}`
    })
  const inARow = (texts: readonly Text[]) => texts.reduce((all, one) => say`${all}, and ${one}`)
  const others = rows(
    later.filter(({ group }) => !started.has(group)),
    false,
  )
  return present([
    say`Start with ${inARow(rows(atOnce, true))}.`,
    others.length > 0 ? say`Then ${inARow(others)}.` : undefined,
  ])
}

/** Those that no rule keeps out: of these the rules speak. */
export function leftLines({ left }: FieldPlan, session: FieldSession, locale: Locale): readonly Text[] {
  const { say, show } = locale
  return left.flatMap(each => {
    const why = lackWords(each.why, locale)
    return why ? [say`Not charged: ${show.number(each.count, 0)} of ${labelOf(each, session, locale)}. ${why}`] : []
  })
}

const labelOf = ({ group }: LeftPacks, { packs }: FieldSession, { own }: Locale): Text =>
  own(writePack((packs[group] as PackGroup).pack))

/** Undefined where a rule keeps it out. */
function lackWords({ kind }: WhyLeft, { say }: Locale): Text | undefined {
  switch (kind) {
    case 'not wanted':
      return say`The flights that were asked for need no more packs.`
    case 'energy':
      return say`The sources have not enough energy left above their floors.`
    case 'time':
      return say`It would not be ready by the time that was asked for.`
    case 'power':
      return say`No charger that could take it gets the power for it beside the others.`
    default:
      return undefined
  }
}

export function sourceLines({ sources }: FieldPlan, names: SessionNames, { say, show }: Locale) {
  return sources.map(({ taken_Wh, available_Wh, drawn_W, most_W, stop }, source) => {
    const name = names.source(source)
    if (drawn_W === 0) return say`${name}: not used.`
    const power = say`draws up to ${show.power(drawn_W)} of its ${show.power(most_W)} at once`
    if (!Number.isFinite(available_Wh)) return say`${name}: the plan ${power}.`
    const line = say`${name}: the plan takes up to ${show.energy(taken_Wh)} of the ${show.energy(available_Wh)} above its floor, and ${power}.`
    if (!stop) return line
    return stop.at === 'load'
      ? say`${line} Stop it at ${show.voltage(stop.volts)} under load.`
      : say`${line} Stop it at ${show.voltage(stop.volts)} at rest.`
  })
}

export const chargerLines = ({ chargers }: FieldSession, { say, show, own }: Locale): readonly Text[] =>
  chargers.map((charger, port) => say`Charger ${show.number(port + 1, 0)}: ${own(writeCharger(charger))}.`)

/** How many are left out, and for what. */
export function leftWords({ left }: FieldPlan, { say, show }: Locale): Text | undefined {
  const short: Readonly<Partial<Record<WhyLeft['kind'], Text>>> = {
    nowhere: say`that nothing here may charge`,
    time: say`for lack of time`,
    energy: say`for lack of energy`,
    power: say`for lack of power`,
  }
  const counts = (Object.keys(short) as WhyLeft['kind'][]).flatMap(kind => {
    const count = left.reduce((sum, each) => (each.why.kind === kind ? sum + each.count : sum), 0)
    return count > 0 ? [joined([show.number(count, 0), short[kind]])] : []
  })
  return counts.length > 0 ? say`Left out: ${joined(counts, ', ')}.` : undefined
}

/** Those that must not be charged at all, by name. */
export const neverWords = ({ left }: FieldPlan, session: FieldSession, locale: Locale): readonly Text[] =>
  left.flatMap(each =>
    each.why.kind === 'never'
      ? [locale.say`${labelOf(each, session, locale)}: ${linesOf(each.why.found, locale)[0]}`]
      : [],
  )

/** How good the plan is: proven best, or how much better any other could be. */
export function provenWords({ ready, wait_min, bound }: FieldPlan, { say, show }: Locale): Text {
  const best = say`Best is what has most packs ready, then what makes them wait least in sum`
  if (bound.ready > ready)
    return say`${best}; of any plan at most ${show.number(bound.ready, 0)} packs could be ready, this one has ${show.number(ready, 0)}.`
  if (bound.wait_min >= wait_min || ready === 0) return say`${best}; this plan is proven best.`
  const mean = (sum_min: number) => show.roughly((sum_min * 60) / ready)
  return say`${best}; no plan has the packs ready after less than ${mean(bound.wait_min)} on average, this one after ${mean(wait_min)}.`
}
