// A verdict in words: why not, what must be known first, and the cautions that go with an answer.

import type { Found } from '../charging/envelope/judge.ts'
import { type LimitKey, limits } from '../charging/envelope/limits/index.ts'
import type { Settled } from '../charging/envelope/settle.ts'
import { emergencies } from '../charging/situation/dangers.ts'
import { doubts, ofPack } from '../charging/situation/doubts.ts'
import type { Locale } from '../ground/locale.ts'
import { present } from '../ground/present.ts'
import { joined, type Text } from '../ground/text.ts'
import { linesOf } from '../handbook/rules/index.ts'
import { writePack } from '../language/things/pack.ts'
import type { Caution, NonEmpty } from './reply.ts'

/** Said of every charge; it closes each list of cautions. */
export const generalCaution = ({ say }: Locale, care?: Text): Caution => ({
  key: 'stayWithIt',
  text: say`Charge on a surface that cannot burn, and stay with the pack until the charge has ended.`,
  short: care ?? say`Care: charge on bare stone or tile, and stay with it.`,
  usual: true,
})

/** Under what is kept or listed: nothing is charged by it. */
export function idleCaution({ say }: Locale): Caution {
  const text = say`If something charges now, stay with it.`
  return { key: 'stayWithIt', text, short: text, usual: true }
}

/** The usual care in a line, by what is about to be done. */
function careOf({ found }: Settled, { say }: Locale): Text | undefined {
  const is = (key: Found['key']) => found.some(one => one.key === key)
  if (is('carried')) return say`Care: cabin only, plugs covered, a bag for each; ask the airline.`
  if (is('drained')) return say`Care: alarm on the balance plug, and stay with it.`
  if (found[0]?.known.situation.act === 'store') return say`Care: keep it cool and dry, out of the sun and the car.`
  return is('balance') ? say`Care: balance lead on, bare stone or tile, stay with it.` : undefined
}

/** Where nothing may go on yet. */
const leaveIt = ({ say }: Locale): Caution => ({
  key: 'leaveIt',
  text: say`Until then it stays unplugged.`,
  usual: true,
})

/** Where nothing is known yet. */
export const untilClear = ({ say }: Locale): Caution => ({
  key: 'untilClear',
  text: say`Keep the pack off the charger until that is clear.`,
})

/** Nobody stays with what burns. */
const smokeCaution = ({ say }: Locale): Caution => ({
  key: 'smoke',
  text: say`It may flare up again. The smoke is poison: who breathed it sees a doctor, even if nothing hurts.`,
  must: true,
})

/** So many musts stand before an answer; the rest stand among the cautions. */
const mostLeads = 2

/** A rule in words; of several packs with the names of those that it is about, where it is not about all of them. */
interface Saying {
  readonly key: string
  readonly lines: readonly Text[]
  readonly names: readonly Text[]
}

/** What says the same of several packs is said once. */
function sayingsOf(
  { found, aside, packs }: Settled,
  which: (found: Found) => boolean,
  locale: Locale,
): readonly Saying[] {
  const all = new Set(packs.map(writePack))
  const alike = Map.groupBy(found.concat(aside).filter(which), one => joined(linesOf(one, locale), '\n'))
  return [...alike.values()].map(of => {
    const [first] = of as [Found]
    const names = new Set(of.flatMap(one => nameOf(one, locale)))
    return {
      key: first.key,
      lines: linesOf(first, locale),
      names: isOfAll(first) || names.size === all.size ? [] : [...names],
    }
  })
}

const isOfAll = ({ key, weight }: Found): boolean =>
  weight === 'note' || (key in limits && limits[key as LimitKey].ofAll)
const nameOf = ({ known: { situation } }: Found, { own }: Locale): readonly Text[] =>
  situation.pack ? [own(writePack(situation.pack))] : []
const spoken = (names: readonly Text[], lines: readonly Text[], { say }: Locale): Text =>
  names.length === 0 ? joined(lines) : say`${joined(names, ', ')}: ${joined(lines)}`
const isEmergency = ({ key }: Saying): boolean => (emergencies as readonly string[]).includes(key)
const weighing = (settled: Settled, weight: Found['weight'], locale: Locale): readonly Saying[] =>
  sayingsOf(
    settled,
    one => one.weight === weight && settled.found.includes(one) && !isSaidExactly(one, settled),
    locale,
  )

/** A danger that was told, which a limit tells of these very packs. */
const exactly: Partial<Record<Found['key'], readonly LimitKey[]>> = {
  boardMixed: ['boardSeries', 'boardChemistries', 'boardApart', 'boardFlow'],
}
const isSaidExactly = ({ key }: Found, { found }: Settled): boolean =>
  found.some(one => one.weight === 'refuse' && exactly[key]?.some(limit => limit === one.key))

/** The danger first, then what to do; of an emergency all there is to do. */
export function refusalOf(settled: Settled, locale: Locale): readonly Text[] {
  const [first] = weighing(settled, 'refuse', locale)
  if (!first) throw new RangeError('nothing was refused')
  const [danger, ...steps] = isEmergency(first) ? first.lines : first.lines.slice(0, 2)
  return [spoken(first.names, present([danger]), locale), ...steps]
}

/** Doubts that an answer stands under: they come right before it, and need no caution beside. */
const isFraming = ({ key }: Pick<Saying, 'key'>): boolean => (ofPack as readonly string[]).includes(key)

/** What must be known before the answer: dangers and limits first, then what the answer stands under. */
export function leadOf(settled: Settled, locale: Locale): readonly Text[] {
  const musts = weighing(settled, 'must', locale)
  const [framing, others] = [musts.filter(isFraming), musts.filter(one => !isFraming(one))]
  // Of several packs one frame is enough: what holds of any.
  const frames = [...Map.groupBy(framing, ({ key }) => key).values()].map(([first, ...more]) =>
    more.length === 0 ? spokenFirst(first as Saying, locale) : joined((first as Saying).lines.slice(-1)),
  )
  return [...others.slice(0, mostLeads).map(one => spokenFirst(one, locale)), ...frames]
}

const spokenFirst = ({ names, lines }: Saying, locale: Locale): Text => spoken(names, lines.slice(0, 1), locale)

/** A lead that ends in a colon frames what comes after it. */
export const underLead = (leads: readonly Text[], answer: readonly Text[]): readonly Text[] => {
  const last = leads.at(-1)
  return last?.endsWith(':')
    ? [...leads.slice(0, -1), joined([last, answer[0]]), ...answer.slice(1)]
    : [...leads, ...answer]
}

/** Notes of which the line of usual care speaks. */
const usualNotes: readonly string[] = ['balance', 'looked', 'drained', 'carried'] satisfies Found['key'][]

/** What must be said is cut by nothing; cares and notes yield to it. The list always ends with what holds of every charge. */
export function cautionsOf(settled: Settled, locale: Locale, isIdle = false): NonEmpty<Caution> {
  const weighs = (weight: Found['weight']) => weighing(settled, weight, locale)
  const from = ({ key, lines, names }: Saying, line: number, must: boolean, end?: number): readonly Caution[] =>
    lines.length <= line
      ? []
      : [
          {
            key,
            text: spoken(names, lines.slice(line, end), locale),
            short: spoken(names, lines.slice(line, line + 1), locale),
            must,
            usual: usualNotes.includes(key),
          },
        ]
  const [refuse, ...refuses] = weighs('refuse')
  const musts = weighs('must').filter(one => !isFraming(one))
  if (refuse && isEmergency(refuse)) {
    // Five lines are read then: of all else only that somebody is hurt too. The rest is a tap away.
    const [hurt] = refuses.filter(isEmergency).flatMap(one => from(one, 0, true, 1))
    const others = [...refuses, ...musts].filter(one => !isEmergency(one))
    return [
      hurt ?? { ...smokeCaution(locale), must: refuse.key === 'fire' },
      ...others.flatMap(one => from(one, 0, false)),
    ]
  }
  if (refuse) {
    const others = [...refuses, ...musts.filter(({ key }) => !(key in doubts))]
    return [
      ...refuse.lines.slice(2).map(text => ({ key: refuse.key, text, must: true })),
      // Each reason is named; what to do about it is read in the care.
      ...others.flatMap(one => from(one, 0, true, 1)),
      ...others.flatMap(one => from(one, 1, false)),
      leaveIt(locale),
    ] as never as NonEmpty<Caution>
  }
  return [
    ...sayingsOf(settled, one => settled.aside.includes(one), locale).flatMap(one => from(one, 0, true)),
    ...musts.flatMap((one, index) => from(one, index < mostLeads ? 1 : 0, true)),
    ...weighs('care').flatMap((one, index) =>
      from(one, 0, false).map(said => ({ ...said, reason: index === 0 && weighs('must').length === 0 })),
    ),
    ...weighs('note').flatMap(one => from(one, 0, false)),
    isIdle ? idleCaution(locale) : generalCaution(locale, careOf(settled, locale)),
  ] as never as NonEmpty<Caution>
}

/** Where the rules that decided come from. */
export const sourcesOf = ({ found, aside }: Settled, locale: Locale): readonly Text[] => [
  ...new Set(
    [...aside, ...found]
      .filter(({ weight, key }) => weight !== 'note' && !(key in doubts))
      .map(one => locale.say`${linesOf(one, locale)[0]} (${locale.own(one.from)})`),
  ),
]
