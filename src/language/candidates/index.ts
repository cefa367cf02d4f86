// All values that a text may tell, whatever way people write them.

import { lately } from '../../ground/lately.ts'
import { longestText, plainText } from '../../ground/plain-text.ts'
import { wordSet } from '../../ground/word-set.ts'
import { leastPlain_C } from '../parts/draft.ts'
import { cueBefore } from './cues.ts'
import { deviceOfReading } from './levels/devices.ts'
import { holdersBefore } from './levels/holders.ts'
import { findLevels } from './levels/levels.ts'
import { findReadings } from './levels/readings.ts'
import { findChemistries } from './packs/chemistries.ts'
import { findPacks } from './packs/packs.ts'
import { findApart } from './quantities/apart.ts'
import { findClocks, roleOf } from './quantities/clocks.ts'
import { behindHow, findCounts } from './quantities/counts.ts'
import { findDrops } from './quantities/drops.ts'
import { findDurations } from './quantities/durations.ts'
import { findEnds } from './quantities/ends.ts'
import { findNumbers } from './quantities/numbers.ts'
import { findQuantities } from './quantities/quantities.ts'
import type { Candidate } from './sentence/candidate.ts'
import { type Family, type Found, Sentence } from './sentence/sentence.ts'
import { findBoards } from './supply/boards.ts'
import { findChargers } from './supply/chargers.ts'
import { findSources } from './supply/sources.ts'

export { bestCover } from './cover.ts'
export type { Candidate, ToldPack, ValueName } from './sentence/candidate.ts'

/** Later ones look at what the earlier found. */
const families: readonly Family[] = [
  findPacks,
  findChemistries,
  findLevels,
  findReadings,
  findQuantities,
  findDrops,
  findApart,
  findEnds,
  findDurations,
  findClocks,
  findCounts,
  findBoards,
  findChargers,
  findSources,
  findNumbers,
]

const eachAfter = /^(?:each|apiece)$/
const levelKinds: ReadonlySet<string> = new Set(['state', 'voltage'])

/** Never throws. All candidates, overlapping ones too, best reading first among those that overlap. */
export const candidatesOf = lately((text: string): readonly Candidate[] => {
  const sentence = new Sentence(plainText(text.slice(0, longestText)))
  const found: Found[] = []
  for (const family of families) found.push(...family(sentence, found))
  return ordered(found.map(one => candidateOf(sentence, one)))
})

function candidateOf(sentence: Sentence, { kind, text, first, after, score, pack, remains }: Found): Candidate {
  const start = sentence.tokens[first]?.start ?? 0
  const end = sentence.tokens[after - 1]?.end ?? start
  const typed = sentence.text.slice(start, end)
  const next = (kind === 'count' ? countedAt(sentence, after) : sentence.word(after)) || undefined
  const cue = (kind === 'clock' ? roleOf(sentence, first, after) : undefined) ?? cueBefore(sentence, first, kind)
  const found: Candidate = {
    kind,
    text,
    start,
    end,
    typed,
    score: Math.round(score * 1000) / 1000,
    cue,
    next,
    pack,
    remains,
  }
  if (kind === 'count') return { ...found, each: isEveryones(sentence, after) }
  if (kind === 'current') return { ...found, each: isOfEach(sentence, first, after) }
  if (kind === 'rate')
    return { ...found, each: isOfEach(sentence, first, after), ofLabel: isOfLabel(sentence, found, after) }
  if (kind === 'power' || kind === 'charger')
    return { ...found, shared: isNear(sentence, first, after, sharing), taken: isTaken(sentence, first, after) }
  if (!levelKinds.has(kind)) return found
  return { ...found, holders: holdersBefore(sentence, first), device: deviceOfReading(sentence, first, after) }
}

/** "Two packs each", "3 lipos per pilot": so many bring each of them. */
const isEveryones = (sentence: Sentence, after: number): true | undefined =>
  (packs.has(sentence.word(after)) &&
    [1, 2, 3].some(n => /^(?:each|apiece|everyone|everybody|per)$/.test(sentence.word(after + n)))) ||
  undefined
const packs = wordSet('pack packs battery batteries lipo lipos lihvs akkus accus')

/** "Six of us" are people. */
const countedAt = (sentence: Sentence, after: number): string =>
  sentence.word(after) === 'of' && sentence.word(after + 1) === 'us'
    ? 'people'
    : sentence.word(behindHow(sentence, after))

/** "2.2A each", "each at 2.2A", "each pack getting 1A". */
function isOfEach(sentence: Sentence, first: number, after: number): true | undefined {
  const before = [1, 2, 3, 4].map(back => sentence.word(first - back))
  const stop = before.findIndex(word => /^(?:[,.;?]$|and$|\d)/.test(word))
  const isBefore = before.slice(0, stop < 0 ? before.length : stop).includes('each')
  return isBefore || eachAfter.test(sentence.word(after)) || undefined
}

const labels = wordSet('label labels sticker stickers printed wrapper datasheet maker makers manufacturer')
const labelCues = wordSet('says say allows reads printed label states')
const wanting = wordSet('at to with by up set charge charging use using go do in is are')
const rates = /\d ?c\b/gi

/** "Label says 3C", "3C charge", "it has 3C on it": what the label allows, not what is to be set. */
function isOfLabel(sentence: Sentence, { cue = '', next, start, text }: Candidate, after: number): true | undefined {
  if (next === 'discharge') return undefined
  // "On it is 25C": no charge is so fast, and none is wanted.
  if (Number.parseFloat(text) >= leastPlain_C && !wanting.has(cue) && !/^charg/.test(next ?? '')) return true
  const isOfCharge = next === 'charge' || (next === 'max' && sentence.word(after + 1) === 'charge')
  const isBeside = labelCues.has(cue) || (isOfCharge && cue !== 'at')
  const isOnIt = next === 'on' && /^(?:it|them|the|its)$/.test(sentence.word(after + 1))
  const isOnly = (sentence.text.match(rates) ?? []).length === 1
  const before = sentence.text.slice(0, start)
  const isSaid = cue === 'at' ? /\b(?:says?|allows?|states?)\b/.test(before) : sentence.mentions(labels)
  const isInClause = (cue === 'charge' || cue === 'max') && labelled.test(before)
  return isBeside || isInClause || (isOnly && (isOnIt || isSaid)) || undefined
}
/** "Label: max charge 5C. Going 3C": of its own clause. */
const labelled = /\b(?:label|sticker|wrapper|datasheet)s?\b[^.;?!\d]*$/

/** "150W shared", "split 100W between": what several outputs divide. */
const sharing = wordSet('share shares shared sharing split between total altogether combined together both overall')

const taking = wordSet(
  'takes took taking take draws draw drawing pulls pull pulling eats eating wants needs consumes consuming uses using',
)
const plugs = wordSet('plug wall socket mains outlet meter input')

/** "Takes 450 W at the plug", "pulls 300 W": what goes into a charger, and not what it gives. */
const isTaken = (sentence: Sentence, first: number, after: number): true | undefined =>
  [first, first - 1, first + 1, first + 2].some(at => at < after && taking.has(sentence.word(at))) ||
  [after, after + 1, after + 2, after + 3].some(at => plugs.has(sentence.word(at))) ||
  undefined

/** One of the words stands right before it or behind it. */
function isNear(sentence: Sentence, first: number, after: number, words: ReadonlySet<string>): true | undefined {
  const near = [first - 4, first - 3, first - 2, first - 1, after, after + 1, after + 2, after + 3]
  return near.some(at => words.has(sentence.word(at))) || undefined
}

/** By place; among those that overlap, in a chain of any length, the surest of the most words first. */
function ordered(candidates: readonly Candidate[]): readonly Candidate[] {
  const byPlace = [...candidates].sort((a, b) => a.start - b.start)
  const all: Candidate[] = []
  let cluster: Candidate[] = []
  let end = 0
  const close = () => {
    all.push(...cluster.sort((a, b) => b.score - a.score || b.end - b.start - (a.end - a.start)))
    cluster = []
  }
  for (const candidate of byPlace) {
    if (candidate.start >= end) close()
    cluster.push(candidate)
    end = Math.max(end, candidate.end)
  }
  close()
  return all
}
