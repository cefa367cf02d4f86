// The clock of a club, told in words: "our club is in Europe/Vienna", "we are on Vienna time".

import { attempt } from '../../ground/problem.ts'
import type { Candidate } from '../../language/candidates/index.ts'
import { readZone } from '../../language/quantities/zone.ts'

const ofClub = /\b(?:we|we're|our|us|club|field)\b/iu
const asks = /\?|^\W*(?:(?:and|so|but|ok) )*(?:is|are|was|do|does|did|what|which|when|where|who|why|how|if)\b/iu
/** How a zone stands in a sentence. */
const ways = [
  /\b((?:Africa|America|Antarctica|Arctic|Asia|Atlantic|Australia|Europe|Indian|Pacific)\/[\p{L}_]+(?:[/-][\p{L}_]+)*)/iu,
  /(?<!\p{L})((?:UTC|GMT) ?[+-] ?\d{1,2}(?::[0-5]\d)?)(?![\d:])/iu,
  /\b(?:on|in|by|to|use|keep|follow) (\p{L}+(?: \p{L}+)?) time\b/iu,
] as const

/** The zone, as typed; undefined where none is told of the club. No time of day is told in it, which would be something else. */
export function clockTold(plain: string, values: readonly Candidate[]): string | undefined {
  if (!ofClub.test(plain) || asks.test(plain) || values.some(({ kind }) => kind === 'clock')) return undefined
  return ways
    .map(way => way.exec(plain)?.[1])
    .find(told => told !== undefined && attempt(() => readZone(told)) !== undefined)
}
