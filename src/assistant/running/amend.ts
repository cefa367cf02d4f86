// A reply to an earlier answer that changes a thing of its question: "at 2A", "from 3.6V", "and for storage".

import { maybe } from '../../charging/situation/doubts.ts'
import { bestCover, candidatesOf } from '../../language/candidates/index.ts'
import { followUp } from '../../language/conversation/follow.ts'
import { stillAssumed } from '../../language/conversation/read-plainly.ts'
import { dangersIn } from '../../language/dangers/index.ts'
import { intentsOf } from '../../language/model/index.ts'
import { questionOf } from '../../language/reading/fit.ts'
import { apart, type Question } from '../../language/sentence/question.ts'
import { readTyped } from '../../language/sentence/typed.ts'
import type { Vocabulary } from '../../language/sentence/vocabulary.ts'

/** Less sure than this, a reply among people is none of our business. */
const leastScore = 0.3

/** The question, in notation, changed as `words` say; undefined where they change none. */
export function amended(question: string, words: string, vocabulary: Vocabulary): Question | undefined {
  const typed = readTyped(question, vocabulary)
  if (!typed) return undefined
  const values = bestCover(candidatesOf(words))
  const { told = [] } = typed.question
  const frame = { question: typed.question, pending: undefined, doubts: apart(told).doubts, names: [] }
  const readBy = () => ({ values, free: {} })
  const choice = followUp({ text: words, values, ranked: intentsOf(words, values), frame, vocabulary, readBy })
  const fitted = choice && choice.score >= leastScore ? choice.fitted : undefined
  if (!fitted || fitted.missing) return undefined
  // What was told of dangers stands for whoever goes on, and what was only assumed stays so.
  const heard = dangersIn(words)
  const now = [...heard.told.map(({ danger }) => danger), ...heard.suspected.map(maybe)]
  const suspected = frame.doubts.filter(doubt => doubt === 'toldBefore' || doubt.startsWith('maybe'))
  const still = [...apart(told).dangers, ...suspected, ...stillAssumed(frame, values)]
  return { ...questionOf(fitted), told: [...new Set([...still, ...fitted.doubts, ...now])] }
}
