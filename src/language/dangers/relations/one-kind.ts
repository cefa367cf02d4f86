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
