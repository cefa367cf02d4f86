// Whether the engine runs of a vehicle that feeds a charger.

import { wordSet } from '../../ground/word-set.ts'
import type { Sentence } from '../candidates/sentence/sentence.ts'
import type { SourceDraft } from './source-draft.ts'

const engines = wordSet('engine motor ignition')
const without = /^(?:without|no|with|the|its|a)$/
const between = /^(?:is|was|are|does|do|being|turned|switched|kept|left|still|currently)$/
const not = /^(?:not|isn't|isnt|never|wasn't|doesn't|doesnt)$/
const standing = /^(?:off|out|stopped|dead|standing|silent)$/
const turning = /^(?:on|running|idling|going|turning|runs?|idles?)$/

/** "Engine off", "motor isn't running", "without the engine running", "ignition is on". */
export function engineEnd(sentence: Sentence, at: number, draft: SourceDraft): number | undefined {
  if (draft.engine !== undefined) return undefined
  let engine = at
  while (engine < at + mostBefore && without.test(sentence.word(engine))) engine += 1
  if (!engines.has(sentence.word(engine))) return undefined
  const isWithout = /^(?:without|no)$/.test(sentence.word(at))
  let next = engine + 1
  let isNot = isWithout
  for (; between.test(sentence.word(next)) || not.test(sentence.word(next)); next += 1)
    isNot ||= not.test(sentence.word(next))
  const state = sentence.word(next)
  // "A 2300 kv motor on 3S" is one of a model.
  const isOnPack = state === 'on' && sentence.numerals[next + 1] !== undefined
  const isTold = !isOnPack && (standing.test(state) || turning.test(state))
  // "Without a motor" alone stands too; of an engine in a model nothing is told.
  if (!isTold && !isWithout) return undefined
  return engineIs(draft, isNot || standing.test(state), isTold ? next + 1 : engine + 1)
}

function engineIs(draft: SourceDraft, isOff: boolean, after: number): number {
  draft.engine = isOff ? 'off' : 'running'
  draft.sure = Math.max(draft.sure, 0.5)
  draft.kind ??= 'vehicle'
  return after
}
const mostBefore = 3
