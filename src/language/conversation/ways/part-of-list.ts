// A part of a pack told behind packs that were all alike: "and with 2200s", "one of them is 1800".

import type { Candidate } from '../../candidates/index.ts'
import { numberNamed } from '../../quantities/quantities.ts'
import { keptList } from '../../reading/kept-list.ts'
import { namesPack, type PackTold, together, toldBy, wholePack } from '../../reading/told/told-pack.ts'

const some =
  /\b(one|two|three|four|\d)(?: (?:pack|battery|of (?:them|these|those|the packs)))? (?:is|are|has|have|says?)\b/i

/** So near stands what counts it. */
const nextTo = 5

/** The values with whole packs in the place of the part: of all, or of some with the others beside them. */
export function ofList(text: string, values: readonly Candidate[], packs: string | undefined): readonly Candidate[] {
  const before = packs === undefined ? undefined : keptList(packs)
  const [part, ...more] = values.filter(value => toldBy(value) !== undefined)
  if (!before?.count || !part || more.length > 0 || namesPack(part)) return values
  const { pack, count: all } = before
  const named = some.exec(text)?.[1]?.toLowerCase() ?? ''
  // "Six of 1800": so many now.
  const counted = values.find(({ kind, end }) => kind === 'count' && end <= part.start && part.start - end < nextTo)
  const isAnew = named === '' && counted !== undefined
  const count = isAnew ? Number(counted.text) : Math.min(numberNamed(named) ?? (Number(named) || all), all)
  const changed = { ...together([toldBy(part) ?? {}, pack]), count }
  const rest = { ...pack, count: isAnew ? 0 : all - count }
  const asPack = (of: PackTold): Candidate => ({ ...part, kind: 'pack', text: wholePack(of).text ?? '', pack: of })
  const others = values.filter(
    value => value !== part && value !== counted && !(named !== '' && value.kind === 'count'),
  )
  return [...others, asPack(changed), ...(rest.count > 0 ? [asPack(rest)] : [])]
}
