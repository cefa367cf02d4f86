// What only a detail tells of a charger: how it balances, what it makes of its input and where it can stop.

import type { Sentence } from '../candidates/sentence/sentence.ts'
import { checked } from '../quantities/quantity.ts'
import { phraseSet } from '../quantities/tokens.ts'
import * as texts from './charger.words.ts'
import type { ChargerDraft } from './charger-parts.ts'
import { measured } from './draft.ts'
import { rowAt } from './rows.ts'

export const cutoffs = { phrase: texts.cutoffsPhrase, min: 2.5, max: 4.5, example: '4.20/4.35V' }
const balancing = { phrase: texts.balancePhrase, min: 0.01, max: 10, example: 'balance 0.3A' }

export const chargerDetail = (sentence: Sentence, at: number, draft: ChargerDraft): number | undefined =>
  leadAt(sentence, at, draft) ?? balanceAt(sentence, at, draft) ?? efficiencyAt(sentence, at, draft)

const leads = ['lead', 'plug'].flatMap(plug => [
  ...['needs', 'need', 'requires', 'require', 'wants', 'want'].flatMap(wants =>
    ['', 'a ', 'the '].map(article => `${wants} ${article}balance ${plug}`),
  ),
  ...['needed', 'required'].map(wanted => `balance ${plug} ${wanted}`),
])
const needsLead = phraseSet(leads.join(', '))

function leadAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const after = draft.needsBalanceLead ? undefined : sentence.phraseEnd(at, needsLead)
  if (after !== undefined) draft.needsBalanceLead = true
  return after
}

const balance = /^balanc(?:e|er|es|ing)$/

/** "Balance 0.3A", "1A balancing". */
function balanceAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const isBefore = balance.test(sentence.word(at))
  const first = isBefore ? at + (sentence.word(at + 1) === 'at' ? 2 : 1) : at
  const measure = draft.balance_A === undefined ? measured(sentence, first, 'current') : undefined
  if (!measure || !(isBefore || balance.test(sentence.word(measure.after)))) return undefined
  draft.balance_A = checked(measure.value, sentence.typed(first, measure.after), 'current', balancing)
  return isBefore ? measure.after : measure.after + 1
}

/** "85%", "85% efficient". */
function efficiencyAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const measure = draft.efficiency === undefined ? measured(sentence, at, 'share') : undefined
  if (!measure) return undefined
  draft.efficiency = Number(`${measure.decimal}e-2`)
  return /^efficien(?:t|cy)$/.test(sentence.word(measure.after)) ? measure.after + 1 : measure.after
}

/** Volts that are none of the input. */
export function cutoffsAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const row =
    draft.cutoffs_V === undefined ? rowAt(sentence, at, 'voltage', { max: 1000, example: cutoffs.example }) : undefined
  if (!row?.hasUnit || /^(?:\+|in|input)$/.test(sentence.word(row.after))) return undefined
  draft.cutoffs_V = [...new Set(row.values)].sort((a, b) => a - b)
  return row.after
}
