// Volts that a lead takes, or may take: "loses half a volt over the loop", "at most 0.5 V drop", "3 % loss in the cable".

import { wordSet } from '../../../ground/word-set.ts'
import { measured } from '../../parts/draft.ts'
import { type Family, none, type Sentence } from '../sentence/sentence.ts'

const leads = wordSet(
  'lead leads wire wires wiring cable cables cord extension harness loop awg gauge mm mm2 flex drum',
)
const drops = wordSet('drop drops dropped dropping lose loses losing lost loss losses sag sags')
const limits = wordSet(
  'may can most max maximum allow allowed allowable up under below limit only accept than want keep',
)
const fillers = wordSet(
  'of about around only just by is a an the roughly max at most no more than up to under below within less :',
)
const mostBetween = 4
/** So much of what is fed in no lead takes that is worth a question. */
const most = { voltage: 6, share: 50 } as const

export const findDrops: Family = sentence => {
  if (!sentence.mentions(leads) || !sentence.mentions(drops)) return none
  return sentence.tokens.flatMap((_, first) => {
    for (const kind of ['voltage', 'share'] as const) {
      const measure = measured(sentence, first, kind)
      if (!measure || measure.value > most[kind] || !isDrop(sentence, first, measure.after)) continue
      // What it loses now sets no limit for another one.
      const text = sentence.mentions(limits) ? `${measure.value}${kind === 'share' ? '%' : 'V'}` : ''
      return [{ kind: text === '' ? 'number' : 'drop', text, first, after: measure.after, score: 0.96 } as const]
    }
    return []
  })
}

function isDrop(sentence: Sentence, first: number, after: number): boolean {
  if (drops.has(sentence.word(after)) || /^(?:over|across|along)$/.test(sentence.word(after))) return true
  for (let at = first - 1; at >= first - 1 - mostBetween; at -= 1) {
    const word = sentence.word(at)
    if (drops.has(word)) return sentence.word(first - 1) !== 'to' || sentence.word(first - 2) === 'up'
    if (!fillers.has(word)) return false
  }
  return false
}
