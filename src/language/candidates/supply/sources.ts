// What feeds a charger: "12v 60ah car battery at 12.5", "cig lighter 10A", "65w usb-c", "laptop brick 20v 3.25a", "generator".

import { wordSet } from '../../../ground/word-set.ts'
import { highestCell_V } from '../../parts/level-words.ts'
import { isLead, type SourceDraft } from '../../parts/source-draft.ts'
import { sourcePart } from '../../parts/source-parts.ts'
import { namedSource } from '../../parts/source-words.ts'
import { writtenSource } from '../../parts/written-source.ts'
import { feedsBySize } from '../packs/packs.ts'
import type { Family, Found, Sentence } from '../sentence/sentence.ts'

interface Run {
  readonly first: number
  readonly after: number
  readonly draft: SourceDraft
}

const glue = wordSet(
  ', @ - / and at with when while of limit limited to gives give does do makes delivers says output on resting rest is wound in has reads showing shows sits ( ) only : rated inside dc behind good for',
)
const articles = wordSet('the my our a old to')
/** Between a source and its volts these mean where it stands. */
const mostGlue = 3

/** All that stands together of a source from this token on. */
function runAt(sentence: Sentence, first: number, taken: ReadonlySet<number>): Run | undefined {
  let draft: SourceDraft = { sure: 0 }
  let after = first
  let at = first
  while (at < sentence.tokens.length && !taken.has(at)) {
    const more = { ...draft }
    const end = sourcePart(sentence, at, more)
    if (end === undefined || isOther(sentence, at, end, draft, more)) break
    draft = more
    after = end
    at = glueEnd(sentence, after, draft)
  }
  return after > first ? ofLead({ first, after, draft }) : undefined
}

/** "12 V 7 Ah", whatever it came out of: labels of lithium packs print other volts. */
const ofLead = (run: Run): Run =>
  run.draft.kind === undefined &&
  run.draft.chemistry === undefined &&
  /^(?:12|24)$/.test(run.draft.volts ?? '') &&
  (run.draft.capacity_Ah ?? 0) >= leastLead_Ah
    ? { ...run, draft: { ...run.draft, kind: 'lead', sure: 0.7 } }
    : run
const leastLead_Ah = 4

/** What stands at this token is no part of the source that was told so far. */
function isOther(sentence: Sentence, at: number, end: number, told: SourceDraft, draft: SourceDraft): boolean {
  const before = sentence.word(at - 1)
  const figures = told.volts ?? told.amps ?? told.watts ?? told.capacity_Ah ?? told.energy_Wh
  const started = figures !== undefined || told.kind !== undefined
  // "brick, generator" names two.
  if (before === ',' && started && namedSource(sentence, at)) return true
  // "The LiFe at 6.6 V and the car battery": figures in front of another thing are none of it.
  const isNext = articles.has(before) && sentence.word(at - 2) === 'and'
  if (isNext && figures !== undefined && told.kind === undefined && namedSource(sentence, at)) return true
  // "450 W at the plug" is what a charger takes.
  const isPlace = before === 'the' && (sentence.word(at - 2) === 'at' || isSocket(sentence, at))
  if (isPlace && told.kind === undefined && told.watts !== undefined) return true
  // "22.3V at 10A" is where a pack stands, and what it is given; "supply at 2A" most often is that too.
  if (before !== 'at') return false
  if (told.kind === undefined) return figures !== undefined
  const isRated = rated.has(sentence.word(at - 2)) || rated.has(sentence.word(end))
  return draft.amps !== told.amps && told.volts === undefined && !isRated
}

/** "450 W from the wall": it takes them there. */
const isSocket = (sentence: Sentence, at: number): boolean =>
  sentence.word(at - 2) === 'from' && (namedSource(sentence, at)?.sure ?? 0) < 0.5

/** "Fused at 8 A", "at a 10 A fuse" is what it gives. */
const rated = wordSet('fused fuse rated limited')

/** "A LiFe box on the cargo bike, 12.8 V": where a box of a type stands is no part of it, its volts are. */
function asideEnd(sentence: Sentence, after: number, draft: SourceDraft): number | undefined {
  const isBox = boxes.has(sentence.word(after - 1)) && draft.chemistry !== undefined && draft.kind === undefined
  if (!isBox || !/^(?:in|on|under|behind|from)$/.test(sentence.word(after))) return undefined
  for (let at = after + 1; at <= after + mostAside; at += 1) {
    if (sentence.tokens[at]?.kind !== 'word' && sentence.word(at) !== ',') {
      const isFigure = sentence.measures[at]?.some(
        ({ dimension }) => dimension === 'voltage' || dimension === 'capacity',
      )
      return isFigure ? at : undefined
    }
  }
  return undefined
}
const boxes = wordSet('box battery batt')
const mostAside = 6

/** "Only 150 W from the generator": what gives them is named behind; amps there are what is to be set. */
function giverAt(sentence: Sentence, after: number, { kind, watts, amps, volts }: SourceDraft): number | undefined {
  const isGiven = kind === undefined && watts !== undefined && (amps ?? volts) === undefined
  if (!isGiven || !/^(?:from|off)$/.test(sentence.word(after))) return undefined
  const at = articles.has(sentence.word(after + 1)) ? after + 2 : after + 1
  return namedSource(sentence, at) && at
}

/** Behind the words that may stand between two parts. */
function glueEnd(sentence: Sentence, after: number, draft: SourceDraft): number {
  let at = after
  const aside = asideEnd(sentence, after, draft)
  if (aside !== undefined) return aside
  const giver = giverAt(sentence, after, draft)
  if (giver !== undefined) return giver
  while (at < after + mostGlue && glue.has(sentence.word(at))) at += 1
  const article = articles.has(sentence.word(at)) && at > after && sentence.word(at - 1) !== ','
  const isTo = sentence.word(at) === 'to'
  if (article && (!isTo || (sentence.word(at - 1) === 'wound' && draft.kind === 'supply'))) return at + 1
  return at
}

export const findSources: Family = (sentence, before) => {
  const packs = before.filter(
    ({ kind, score, pack, after }) =>
      kind === 'pack' && score >= 0.5 && isOwnPack(pack) && namedSource(sentence, after)?.kind !== 'tool',
  )
  const taken = new Set(packs.flatMap(({ first, after }) => Array.from({ length: after - first }, (_, i) => first + i)))
  const found: Found[] = [...packSources(sentence, packs)]
  let inside = 0
  for (let first = 0; first < sentence.tokens.length; first += 1) {
    if (first < inside || taken.has(first)) continue
    const run = runAt(sentence, first, taken)
    if (!run) continue
    const score =
      isMadeOf(sentence, run) ||
      isOfPack(run, packs) ||
      isReading(sentence, run, packs) ||
      (packs.length > 0 && isEngineAlone(sentence, run))
        ? 0
        : scoreOf(run, feeding.has(cueOf(sentence, first)))
    if (score === 0) continue
    inside = run.after
    found.push({ kind: 'source', text: writtenSource(run.draft), first, after: run.after, score })
  }
  return found
}

/** Cells are told: no lead battery is told by them. */
const isOwnPack = (pack: Found['pack']): boolean => pack?.series !== undefined

/** "Aku 3S 2200": a word for any battery right before a pack is that one. */
const isOfPack = ({ after, draft: { kind, volts, capacity_Ah } }: Run, packs: readonly Found[]): boolean =>
  kind === 'lead' && (volts ?? capacity_Ah) === undefined && packs.some(({ first }) => first === after)

/** "3S 1000 @ 11.85 V, 0.8 A": where a pack stands, and what it is given. */
const isReading = (sentence: Sentence, { first, draft: { kind, volts = '' } }: Run, packs: readonly Found[]): boolean =>
  kind === undefined &&
  volts.includes('.') &&
  /^(?:at|@|is|=)$/.test(sentence.word(first - 1)) &&
  packs.some(({ after, pack }) => after === first - 1 && Number(volts) <= (pack?.series ?? 0) * highestCell_V)

/** "A power bank made of 3s2p cells": what is built there is charged, and told by its cells. */
const isMadeOf = (sentence: Sentence, { after, draft }: Run): boolean =>
  (draft.kind === 'bank' || draft.kind === 'station') &&
  draft.energy_Wh === undefined &&
  draft.capacity_Ah === undefined &&
  makers.has(sentence.word(after))
const makers = wordSet('made built of from out')

/** "Parked up, engine off": of nothing that feeds is spoken. */
const isEngineAlone = (sentence: Sentence, { first, after, draft }: Run): boolean =>
  draft.engine !== undefined &&
  (draft.volts ?? draft.amps ?? draft.watts ?? draft.capacity_Ah) === undefined &&
  !sentence.tokens.slice(first, after).some(({ word }) => vehicle.test(word)) &&
  !sentence.tokens.some(({ word }) => vehicle.test(word) || feedsFrom.test(word))
const vehicle =
  /^(?:cars?|vans?|trucks?|vehicles?|campers?|tractors?|lorry|lighter|sockets?|jeeps?|pickup|boats?|battery|cig|cigarette|dash|12v)$/
const feedsFrom = /^(?:from|alternator|bonnet|hood|poles?|clips?|clamps?)$/

function scoreOf({ draft }: Run, isFeeding: boolean): number {
  const { kind, sure, volts, amps, watts, capacity_Ah, energy_Wh, engine } = draft
  const figures = [volts, amps, watts, capacity_Ah, energy_Wh, engine].filter(one => one !== undefined).length
  if (kind === undefined) {
    if (volts !== undefined && amps !== undefined) return Number(volts) >= 5 ? 0.85 : 0
    // Lamps and heaters are told by volts and watts too.
    if (volts !== undefined && watts !== undefined) return 0.4
    if (capacity_Ah !== undefined && capacity_Ah >= 12) {
      return draft.chemistry !== undefined || volts !== undefined ? 0.9 : 0.75
    }
    return draft.chemistry === 'AGM' ? 0.3 : 0
  }
  // "From the car": behind such a word a thing that can feed does.
  if (figures === 0) return sure < 0.4 ? (isFeeding ? 0.4 : 0) : sure * 0.85
  return isLead(draft) || sure > 0.5 ? 0.88 : 0.75
}

const feeding = wordSet('off using from out via with')
const between = wordSet('my the a an of our his')

/** "It came out of the car". */
const brings = /\b(?:came|come|comes|took|taken|got|fetched|brought|carried|fresh|straight|back)\b/

/** The word that stands before it, an article aside. */
function cueOf(sentence: Sentence, first: number): string {
  let at = first - 1
  while (at > first - 4 && between.has(sentence.word(at))) at -= 1
  const isTaken = brings.test([sentence.word(at - 1), sentence.word(at - 2)].join(' '))
  return isTaken ? '' : sentence.word(at)
}

/** A pack that feeds: behind "from", "off" or "using". */
function packSources(sentence: Sentence, packs: readonly Found[]): readonly Found[] {
  return packs.flatMap(({ text, first, after, score, pack }) => {
    if (pack?.capacity_Ah === undefined) return []
    if (feedsBySize(pack.capacity_Ah)) return [{ kind: 'source' as const, text, first, after, score: 0.99 }]
    const cue = cueOf(sentence, first)
    if (!feeding.has(cue)) return []
    const likely = cue === 'with' ? 0.4 : cue === 'from' && packs.length < 2 ? 0.7 : 0.99
    return [{ kind: 'source' as const, text, first, after, score: likely * Math.min(1, score / 0.94) }]
  })
}
