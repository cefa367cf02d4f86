// Chargers: "0.3/0.8/1.5/3A steps", "charger does 0.1 to 10 A, 200 W", "50W charger", "goes to 6 A".

import { wordSet } from '../../../ground/word-set.ts'
import { type ChargerDraft, chargerPart, isDefinite, writtenCharger } from '../../parts/charger-parts.ts'
import type { Family, Found, Sentence } from '../sentence/sentence.ts'

const chargerWords = wordSet(
  'charger chargers charge-box channel channels port ports output outputs outlet outlets lader chargeur cargador',
)
const glue = wordSet(
  '/ of with does do wants needs takes that goes go to up has have gives is , and at max maximum a an the can do : ( ) - each it says stands written marked only can per by my old new little small big single double dual',
)
/** "A wall outlet" gives what mains give. */
const ofWall = wordSet('wall mains club power')
const mostGlue = 3

interface Run {
  readonly first: number
  readonly after: number
  readonly draft: ChargerDraft
}

/** All parts of a charger that stand together; the word itself may be among them. */
function runAt(sentence: Sentence, start: number): Run | undefined {
  let draft: ChargerDraft = {}
  let after = start
  let at = start
  let skipped = 0
  while (skipped <= mostGlue && at < sentence.tokens.length) {
    const isWord = chargerWords.has(sentence.word(at)) && !ofWall.has(sentence.word(at - 1))
    const more: ChargerDraft = { ...draft }
    const end = isWord ? at + 1 : chargerPart(sentence, at, more)
    if (end !== undefined) {
      if (isOther(sentence, at, isWord, at === after, draft, more)) break
      if (isWord && draft.named) break
      if (isWord) more.named = true
      draft = more
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

const articles = wordSet('the my our a')

/** A current behind "at" or a comma is one that is to be set; a word behind a comma begins another thing. */
function isOther(
  sentence: Sentence,
  at: number,
  isWord: boolean,
  beside: boolean,
  told: ChargerDraft,
  draft: ChargerDraft,
): boolean {
  const before = sentence.word(isWord && articles.has(sentence.word(at - 1)) ? at - 2 : at - 1)
  // "30A charger", but not "at 2A on my charger".
  const several = told.power_W !== undefined || told.several !== undefined
  if (isWord) return isDefinite(told) && !beside && (before === ',' || !several)
  const set = before === 'at' || (before === ',' && told.named === true && !isDefinite(told))
  return set && draft.power_W === told.power_W && draft.most_A !== told.most_A && draft.several === undefined
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
    const score = scoreOf(sentence, run, talk)
    if (score > 0) found.push(...spans(sentence, run, text, score))
  }
  return found
}

const callers = wordSet('a an the my double old hers his other one small dual second single on')
const loads = wordSet(
  'discharger dischargers bulb generator genny inverter solar panel lamp vest heater fan goggles light iron cool runs run',
)

function scoreOf(sentence: Sentence, run: Run, talk: boolean): number {
  const { draft } = run
  if (draft.named) return isDefinite(draft) || draft.input !== undefined ? 0.9 : 0.3
  const more = [draft.power_W, draft.by_A, draft.cells, draft.input].filter(part => part !== undefined).length
  if (draft.several) return Math.min(0.95, 0.75 + 0.07 * more)
  if (draft.power_W !== undefined && draft.most_A !== undefined) return 0.6
  if (draft.power_W === undefined) return 0
  // "an 80w and a double 100w", "on the 65w": no other thing is called by its watts alone.
  const called = callers.has(sentence.word(run.first - 1)) && !sentence.mentions(loads)
  return (called ? 0.65 : 0.3) + (talk ? 0.15 : 0)
}

const before = wordSet('two three four one single dual double small big old third second my our a 2 3 4')

/**
 * People mean the figures by themselves too, or how many of them and "each": where the word stands in front or
 * behind, or such words around it, those spans are offered as well.
 */
function spans(sentence: Sentence, { first, after, draft }: Run, text: string, score: number): readonly Found[] {
  const whole: Found = { kind: 'charger', text, first, after, score }
  if (!draft.named) return [whole]
  const end = chargerWords.has(sentence.word(after - 1)) ? after - 1 : after
  const found = [whole]
  if (end < after && end > first) found.push({ ...whole, after: end, score: score - 0.2 })
  const wide = before.has(sentence.word(first - 1)) ? first - 1 : first
  const each = sentence.word(after) === 'each' ? after + 1 : after
  if (wide < first || each > after) found.push({ ...whole, first: wide, after: each, score: score - 0.25 })
  return found
}
