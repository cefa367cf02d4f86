// Chargers: "1/2/3/5A steps", "charger does 0.1 to 10 A, 200 W", "50W charger", "goes to 6 A".

import { type ChargerDraft, chargerPart, isDefinite, writtenCharger } from './charger-parts.ts'
import { type Family, type Found, type Sentence, wordSet } from './sentence.ts'

const chargerWords = wordSet(
  'charger chargers charge-box channel channels port ports output outputs lader chargeur cargador',
)
const glue = wordSet(
  'of with does that goes go to up has have gives is , and at max maximum a an the can do : ( ) - each it says only can per by my old new little small big single double dual',
)
const lead = wordSet('max maximum up only little old small big single dual double')
const mostGlue = 3

interface Run {
  readonly first: number
  readonly after: number
  readonly draft: ChargerDraft
}

/** All parts of a charger that stand together; the word itself may be among them. */
function runAt(sentence: Sentence, start: number): Run | undefined {
  const draft: ChargerDraft = {}
  let after = start
  let at = start
  let skipped = 0
  while (skipped <= mostGlue && at < sentence.tokens.length) {
    const isWord = chargerWords.has(sentence.word(at))
    const end = isWord ? at + 1 : chargerPart(sentence, at, draft)
    if (end !== undefined) {
      if (isWord && draft.named) break
      if (isWord) draft.named = true
      after = end
      at = end
      skipped = 0
    } else if (glue.has(sentence.word(at)) && at > start) {
      at += 1
      skipped += 1
    } else break
  }
  return after > start ? { first: start, after, draft } : undefined
}

export const findChargers: Family = sentence => {
  const found: Found[] = []
  const talk = sentence.mentions(chargerWords)
  let inside = 0
  for (let first = 0; first < sentence.tokens.length; first += 1) {
    if (first < inside) continue
    const run = runAt(sentence, first)
    if (!run) continue
    const text = writtenCharger(run.draft)
    if (text === '') continue
    inside = run.after
    const score = scoreOf(run, talk)
    if (score > 0) found.push(...spans(sentence, run, text, score))
  }
  return found
}

function scoreOf({ draft }: Run, talk: boolean): number {
  if (draft.named) return isDefinite(draft) ? 0.9 : 0.3
  if (draft.several) return 0.75
  if (draft.power_W !== undefined && draft.most_A !== undefined) return 0.6
  if (draft.power_W !== undefined) return talk ? 0.55 : 0.4
  return 0
}

/** People mean the figures by themselves too; where the word stands in front or behind, both spans are offered. */
function spans(
  sentence: Sentence,
  { first, after, draft }: Run,
  text: string,
  score: number,
): readonly Found[] {
  const whole: Found = { kind: 'charger', text, first, after, score }
  if (!draft.named) return [whole]
  const start = chargerWords.has(sentence.word(first)) ? skipGlue(sentence, first + 1, after) : first
  const end = chargerWords.has(sentence.word(after - 1)) ? after - 1 : after
  const inner = start > first || end < after
  return inner && end > start ? [whole, { ...whole, first: start, after: end, score: score - 0.2 }] : [whole]
}

function skipGlue(sentence: Sentence, first: number, after: number): number {
  let at = first
  while (at < after && (glue.has(sentence.word(at)) || lead.has(sentence.word(at)))) at += 1
  return at
}
