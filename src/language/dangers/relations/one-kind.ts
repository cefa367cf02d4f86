// Whether packs on a board are said to be of one kind, or to be alike.

import { mostApart_V } from '../../../charging/things/practice.ts'
import { type Told, textOf } from './relation.ts'

/** How full they are is asked for anyway; a word more may part them. */
const plainly =
  /^(?:(?:and|so|or|what about|how about|what if|can|could|may) )*(?:(?:i|we) )?(?:(?:put|hang|plug|charge) )?(?:(?:a|the|my|all) )?(?:pair|couple|both|two|three|four|five|six|seven|eight|nine|ten|twelve|dozen|\d+)(?: x)?(?: of)?(?: (?:them|those|these|it))?(?: (?:packs|lipos|batteries))?(?: in parallel| together| at once| on (?:a|the|my|one|the same) (?:parallel )?board)+(?: how long| (?:what|how many|which) (?:amps|current|watts))?$/

const ofPack = new Set<Told['values'][number]['kind']>(['count', 'chemistry', 'mAh'])
/** Volts and shares are less. */
const leastCapacity = 150

/** "A pair of them on the board", "two 4S 5000 in parallel, how long". */
export function isOneKind({ marked: { words }, values }: Told): boolean {
  const parts = values.filter(({ kind, value }) => ofPack.has(kind) || (kind === 'bare' && value >= leastCapacity))
  const of = (kind: 'count' | 'chemistry', by: 'value' | 'chemistry') =>
    new Set(parts.filter(one => one.kind === kind).map(one => one[by])).size
  const besides = words.filter((_, at) => !parts.some(({ from, to }) => at >= from && at < to))
  return of('count', 'value') <= 1 && of('chemistry', 'chemistry') <= 1 && plainly.test(textOf(besides))
}

const apart =
  /^(?:full\w*|empty|flat|half|fresh|landed|topped|used|drained|new|old|charged|puff\w*|swoll\w*|mix\w*|other|another|different|one|without|not|series|then|or|even|exhausted|replenished)$/
const several = /\b(?:two|three|four|five|six|both|my|these|\d+) (?:packs|lipos|batteries|x|of)\b/
const mostWords = 14

/** "Two 3S packs on a Y cable to charge at once": of one kind, as far as it is told. */
export function isOneCount({ marked: { words }, values, has }: Told): boolean {
  const counts = new Set(values.flatMap(({ kind, value }) => (kind === 'count' ? [value] : [])))
  const types = new Set(values.flatMap(({ chemistry }) => chemistry ?? []))
  const isRead = values.some(({ kind }) => kind === 'volts' || kind === 'percent')
  const isBare = values.some(({ kind, value }) => kind === 'bare' && !Number.isInteger(value))
  return (
    has('board') &&
    words.length <= mostWords &&
    several.test(textOf(words)) &&
    counts.size === 1 &&
    types.size <= 1 &&
    !isRead &&
    !isBare &&
    !words.some(({ w }) => apart.test(w))
  )
}

/** Words for how a pack stands, or that it is another one. */
export const states =
  /^(?:full|empty|flat|half|fresh|landed|topped|used|drained|new|old|charged|puff|swoll|another|different)/
const same = /^(?:same|alike|equal|identical|matching)$/
const every = /^(?:all|every|both|each|two|three|four|five|six|seven|eight|nine|ten|twelve|\d+|they|theyre|are)$/
/** Of these, packs of any kind may share the same one. */
const shared =
  /^(?:board|charger|lead|port|plug|time|cable|bag|box|shelf|place|day|output|hub|strip|current|amps?|rate)$/
const doubting = /^(?:not|isnt|arent|nearly|almost|roughly|except|but|only|different|mixed?|volts?|brand)$/

/** "All eight the same": so they are said to be, or to be put together only if they are. */
export function isSaidSame({ marked: { words } }: Told): boolean {
  const isApart = ({ w }: { readonly w: string }, at: number) =>
    (states.test(w) && words[at - 1]?.w !== 'equally') || doubting.test(w)
  if (words.some(isApart)) return false
  if (words.some(({ w }, at) => w === 'exactly' && words[at + 1]?.w === 'like')) return true
  return words.some(
    ({ w }, at) =>
      same.test(w) &&
      !shared.test(words[at + 1]?.w ?? '') &&
      words.slice(Math.max(0, at - 4), at).some(one => every.test(one.w)),
  )
}

/** "All within 0.02 V", "within two hundredths of a volt": no further apart than packs may lie. */
export const isSaidWithin = ({ marked: { words }, values }: Told): boolean =>
  words.some(
    ({ w }, at) =>
      w === 'within' &&
      (words.slice(at + 1, at + 4).some(one => /^(?:hundredths?|tenth)$/.test(one.w)) ||
        values.some(({ kind, from, value }) => from === at + 1 && kind === 'volts' && value <= mostApart_V.value)),
  )
