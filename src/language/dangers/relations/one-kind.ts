// Whether a text puts so many of one kind on a board and says nothing else of them.

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
