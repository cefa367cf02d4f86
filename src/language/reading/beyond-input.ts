// Volts that a charger does not take at its input ("takes 11 to 18 V, all I have is 24 V"): judged before all else.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Vocabulary } from '../sentence/vocabulary.ts'
import { type Fitted, fitTo, type Kept } from './fit.ts'

const judging = 'supply'
const window = /\b([\d.]+)-([\d.]+)V\b/
const volts = /\b([\d.]+)V\b/

/** What judges it, with what was told `before`; undefined where no volts are told beyond those of a charger. */
export function beyondInput(
  values: readonly Candidate[],
  vocabulary: Vocabulary,
  { source, charger }: Kept,
): Fitted | undefined {
  const command = vocabulary.find(({ name }) => name === judging)
  const own = values.find(({ kind, text }) => kind === 'charger' && window.test(text))
  const [, low, high] = window.exec(own?.text ?? charger ?? '') ?? []
  const isBeyond = (text: string) => {
    const [, told] = volts.exec(text) ?? []
    return told !== undefined && (Number(told) > Number(high) || Number(told) < Number(low))
  }
  const feeds = values.filter(({ kind }) => kind === 'source' || kind === 'voltage')
  const isTold = feeds.some(({ text }) => isBeyond(text))
  const isKept = own !== undefined && feeds.length === 0 && source !== undefined && isBeyond(source)
  if (!command || low === undefined || !(isTold || isKept)) return undefined
  const kept: Record<string, string> = {}
  if (isKept) kept.source = source
  if (own === undefined && charger !== undefined) kept.charger = charger
  const fitted = fitTo(command, values, kept)
  return fitted.missing === undefined ? fitted : undefined
}
