// Volts that a charger does not take at its input ("takes 11 to 18 V, all I have is 24 V"): judged before all else.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Vocabulary } from '../sentence/vocabulary.ts'
import { type Fitted, fitTo } from './fit.ts'

const judging = 'supply'
const window = /\b([\d.]+)-([\d.]+)V\b/
const volts = /\b([\d.]+)V\b/

/** What judges it; undefined where no volts are told beyond those of a charger that is told with them. */
export function beyondInput(values: readonly Candidate[], vocabulary: Vocabulary): Fitted | undefined {
  const command = vocabulary.find(({ name }) => name === judging)
  const charger = values.find(({ kind, text }) => kind === 'charger' && window.test(text))
  const [, low, high] = window.exec(charger?.text ?? '') ?? []
  const feeds = values.find(value => {
    const [, told] = volts.exec(value.text) ?? []
    const isFeed = value.kind === 'source' || value.kind === 'voltage'
    return isFeed && told !== undefined && (Number(told) > Number(high) || Number(told) < Number(low))
  })
  if (!command || !charger || !feeds) return undefined
  const fitted = fitTo(command, values)
  return fitted.missing === undefined ? fitted : undefined
}
