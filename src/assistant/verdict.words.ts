// A verdict in words: why not, what must be known first, and the cautions that go with an answer.

import type { Found } from '../charging/envelope/judge.ts'
import type { Settled } from '../charging/envelope/settle.ts'
import { emergencies } from '../charging/situation/dangers.ts'
import type { Locale } from '../ground/locale.ts'
import { joined, type Text } from '../ground/text.ts'
import { linesOf } from '../handbook/rules/index.ts'
import type { Caution, NonEmpty } from './reply.ts'

/** Said of every charge; it closes each list of cautions. */
export const generalCaution = ({ say }: Locale): Caution => ({
  key: 'stayWithIt',
  text: say`Charge on a surface that cannot burn, and stay with the pack until the charge has ended.`,
})

/** Beyond what must be said nobody reads more. */
const mostNotes = 3
/** So many musts stand before an answer; the rest stand among the cautions. */
const mostLeads = 2

const ofWeight = ({ found }: Settled, weight: Found['weight']): readonly Found[] =>
  found.filter(one => one.weight === weight)

/** The danger first, then what to do; of an emergency all there is to do. */
export function refusalOf(settled: Settled, locale: Locale): Text {
  const [first] = ofWeight(settled, 'refuse')
  if (!first) throw new RangeError('nothing was refused')
  const lines = linesOf(first, locale)
  const isEmergency = (emergencies as readonly string[]).includes(first.key)
  return joined(isEmergency ? lines : lines.slice(0, 2))
}

/** What must be known before the answer. */
export const leadOf = (settled: Settled, locale: Locale): readonly Text[] =>
  ofWeight(settled, 'must')
    .slice(0, mostLeads)
    .map(found => linesOf(found, locale)[0])

/** What must be said is cut by nothing; cares and notes yield to it. The list always ends with what holds of every charge. */
export function cautionsOf(settled: Settled, locale: Locale): NonEmpty<Caution> {
  const [refuse, ...refuses] = ofWeight(settled, 'refuse')
  const musts = ofWeight(settled, 'must')
  const rest = (found: Found): readonly Caution[] => caution(found, linesOf(found, locale).slice(1), true)
  const whole = (found: Found, must = false) => caution(found, linesOf(found, locale), must)
  const aside = settled.aside.flatMap(found => whole(found, true))
  if (refuse) {
    const isEmergency = (emergencies as readonly string[]).includes(refuse.key)
    const left = isEmergency ? [] : caution(refuse, linesOf(refuse, locale).slice(2), true)
    return [
      ...left,
      ...refuses.flatMap(found => whole(found, true)),
      ...musts.flatMap(found => whole(found, true)),
      generalCaution(locale),
    ] as never as NonEmpty<Caution>
  }
  const cautions = [
    ...aside,
    ...musts.flatMap((found, index) => (index < mostLeads ? rest(found) : whole(found, true))),
    ...ofWeight(settled, 'care').flatMap(found => whole(found)),
    ...ofWeight(settled, 'note')
      .slice(0, mostNotes)
      .flatMap(found => whole(found)),
    generalCaution(locale),
  ]
  return cautions as never as NonEmpty<Caution>
}

const caution = ({ key }: Found, lines: readonly Text[], must: boolean): readonly Caution[] =>
  lines.length === 0 ? [] : [{ key, text: joined(lines), must }]

/** Where the rules that decided come from. */
export const sourcesOf = ({ found, aside }: Settled, locale: Locale): readonly Text[] =>
  [...aside, ...found]
    .filter(({ weight }) => weight !== 'note')
    .map(one => locale.say`${linesOf(one, locale)[0]} (${locale.own(one.from)})`)
