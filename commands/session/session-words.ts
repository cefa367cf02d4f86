// The words of a session plan: who is charged where and when, who is left out and why, and what each source gives.

import { refusalWords, whoLimits } from '../../src/cautions/refusals.ts'
import type {
  FieldPlan,
  FieldSession,
  LeftPacks,
  PackGroup,
  PlannedCharge,
  WhyLeft,
} from '../../src/charging/plan/field.ts'
import type { Refusal } from '../../src/charging/setting/refusal.ts'
import type { Show } from '../../src/ground/show.ts'
import { writeCharger } from '../../src/language/things/charger.ts'
import { writePack } from '../../src/language/things/pack.ts'
import { writeSource } from '../../src/language/things/source.ts'

/** The names under which a reply speaks of packs, chargers and sources. */
export interface SessionNames {
  pack(group: number, number: number): string
  port(port: number): string
  source(source: number): string
}

/** Packs of one label are numbered through, whatever state they are in. */
export function namesIn({ packs, sources }: FieldSession): SessionNames {
  const labels = packs.map(({ pack }) => writePack(pack))
  const alikeBefore = (group: number) =>
    packs.reduce(
      (sum, { count }, other) => (other < group && labels[other] === labels[group] ? sum + count : sum),
      0,
    )
  const alike = (group: number) =>
    packs.reduce((sum, { count }, other) => (labels[other] === labels[group] ? sum + count : sum), 0)
  const fed = sources.map(({ source }) => writeSource(source))
  return {
    pack: (group, number) =>
      alike(group) > 1 ? `${labels[group]} #${alikeBefore(group) + number}` : (labels[group] as string),
    port: port => `charger ${port + 1}`,
    source: source => {
      const twins = fed.filter(text => text === fed[source]).length
      return twins > 1 ? `${fed[source]} (source ${source + 1})` : (fed[source] as string)
    },
  }
}

export const settingText = ({ current_A, cutoff }: PlannedCharge['setting'], show: Show): string =>
  `${show.current(current_A)} to ${show.perCell(cutoff.perCell_V)}`

/** "0 min to 52 min: 3S 720mAh LiHV #1 on charger 1, fed by PD 65W. Set 1 A and 4.35 V per cell." */
export function chargeLine(charge: PlannedCharge, names: SessionNames, show: Show): string {
  const { group, number, port, source, setting, start_s, end_s } = charge
  const fed = source === undefined ? '' : `, fed by ${names.source(source)}`
  const held = typeof setting.bound === 'object' ? ` (all that ${whoLimits[setting.bound.kind]})` : ''
  const fast = setting.cares.includes('above the wanted current') ? ` (${show.rate(setting.rate_C)})` : ''
  return `${clock(start_s, show)} to ${clock(end_s, show)}: ${names.pack(group, number)} on ${names.port(port)}${fed}. Set ${show.current(setting.current_A)}${fast} and ${show.perCell(setting.cutoff.perCell_V)} per cell${held}.`
}

const clock = (time_s: number, show: Show): string => (time_s === 0 ? 'Start' : show.duration(time_s))

export function leftLines({ left }: FieldPlan, session: FieldSession, show: Show): string[] {
  return left.map(({ group, count, why }) => {
    const { pack } = session.packs[group] as FieldSession['packs'][number]
    return `Not charged: ${count} of ${writePack(pack)}. ${whyWords(why, show)}`
  })
}

export function whyWords(why: WhyLeft, show: Show): string {
  switch (why.kind) {
    case 'unsound':
      return `It is said to be ${why.word}: such a pack is never charged.`
    case 'refused': {
      const { headline, instead } = refusalWords(why.refusal, show)
      return `${headline} ${instead}`
    }
    case 'not wanted':
      return 'The flights that were asked for need no more packs.'
    case 'energy':
      return 'The sources have not enough energy left above their floors.'
    case 'time':
      return 'It would not be ready by the time that was asked for.'
    case 'power':
      return 'No charger that could take it gets the power for it beside the others.'
  }
}

export function sourceLines({ sources }: FieldPlan, names: SessionNames, show: Show): string[] {
  return sources.map(({ taken_Wh, available_Wh, drawn_W, most_W, stop }, source) => {
    if (drawn_W === 0) return `${names.source(source)}: not used.`
    const power = `draws up to ${show.power(drawn_W)} of its ${show.power(most_W)}`
    return Number.isFinite(available_Wh)
      ? `${names.source(source)}: the plan takes up to ${show.energy(taken_Wh)} of the ${show.energy(available_Wh)} above its floor, and ${power} at once.${stop ? ` Stop it at ${show.voltage(stop.volts)} ${stop.at === 'load' ? 'under load' : 'at rest'}.` : ''}`
      : `${names.source(source)}: the plan ${power} at once.`
  })
}

export function chargerLines({ chargers }: FieldSession, names: SessionNames): string[] {
  return chargers.map((charger, port) => `${capital(names.port(port))}: ${writeCharger(charger)}.`)
}

/** Those that must not be charged at all by name; how many of the others, and for what. */
export function leftWords({ left }: FieldPlan, session: FieldSession, show: Show): string {
  const isDanger = ({ why }: LeftPacks) =>
    why.kind === 'unsound' || (why.kind === 'refused' && dangers.has(why.refusal.kind))
  const dangerous = left
    .filter(isDanger)
    .map(({ group, why }) => `${writePack((session.packs[group] as PackGroup).pack)}: ${whyWords(why, show)}`)
  const countOf = (kind: WhyLeft['kind']) =>
    left.reduce((sum, each) => (each.why.kind === kind && !isDanger(each) ? sum + each.count : sum), 0)
  const others = (['refused', 'time', 'energy', 'power'] as const)
    .filter(kind => countOf(kind) > 0)
    .map(kind => `${countOf(kind)} ${shortWhy[kind]}`)
  return [...(others.length > 0 ? [`Left out: ${others.join(', ')}.`] : []), ...dangerous].join(' ')
}

const dangers: ReadonlySet<Refusal['kind']> = new Set(['damaged cell', 'overcharged cell', 'temperature'])

const shortWhy = {
  refused: 'that nothing here may charge',
  time: 'for lack of time',
  energy: 'for lack of energy',
  power: 'for lack of power',
} as const

/** How good the plan is: proven best, or how much better any other could be. */
export function provenWords({ ready, wait_min, bound }: FieldPlan, show: Show): string {
  const best = 'Best is what has most packs ready, then what makes them wait least in sum'
  if (bound.ready > ready)
    return `${best}; of any plan at most ${bound.ready} packs could be ready, this one has ${ready}.`
  if (bound.wait_min >= wait_min || ready === 0) return `${best}; this plan is proven best.`
  const mean = (sum_min: number) => show.duration((sum_min * 60) / ready)
  return `${best}; no plan has the packs ready after less than ${mean(bound.wait_min)} on average, this one after ${mean(wait_min)}.`
}

export const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`
