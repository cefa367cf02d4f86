// What goes on from a question is told from what begins anew, of people whom nothing was learned from.

import { describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { createRegistry } from '../../../src/assistant/registry.ts'
import { bestCover, candidatesOf } from '../../../src/language/candidates/index.ts'
import { followUp } from '../../../src/language/conversation/follow.ts'
import { readPlainly } from '../../../src/language/conversation/read-plainly.ts'
import type { Frame } from '../../../src/language/frames/frame.ts'
import { intentsOf } from '../../../src/language/model/index.ts'
import { heldOut, messagesOf } from '../../../training/corpus/read-corpus.ts'

const { vocabulary } = createRegistry(commands)

function frameOf(text: string): Frame | undefined {
  const meant = readPlainly(text, vocabulary, undefined, [], 0)
  return meant.kind === 'question' ? { question: meant.question, pending: undefined, doubts: [], names: [] } : undefined
}

/** 0 where it changes nothing of the question before. */
function follows(text: string, frame: Frame): number {
  const values = bestCover(candidatesOf(text))
  const readBy = () => ({ values, free: {} })
  return followUp({ text, values, ranked: intentsOf(text, values), frame, vocabulary, readBy })?.score ?? 0
}

const byAuthor = [...heldOut].map(author => messagesOf(author).filter(({ part }) => part === 'A'))
const hasValues = ({ text }: { text: string }) => bestCover(candidatesOf(text)).length > 0

describe('a message behind another', () => {
  it('that changes a value of it is read as a change, seven times of ten at least: others only ask for reasons or for another quantity', () => {
    const scores = byAuthor.flat().flatMap(message => {
      const frame = message.intent === 'amend' && hasValues(message) ? frameOf(message.after ?? '') : undefined
      return frame ? [follows(message.text, frame)] : []
    })
    expect(scores.length).toBeGreaterThan(20)
    expect(scores.filter(score => score > 0.5).length / scores.length).toBeGreaterThan(0.7)
  })

  it('that begins anew is not read as a change, of 100 of them more than 95', () => {
    const scores = byAuthor.flatMap(messages => {
      const frame = messages.flatMap(({ after }) => (after === undefined ? [] : (frameOf(after) ?? [])))[0]
      const anew = messages.filter(message => message.intent !== 'amend' && hasValues(message))
      return frame ? anew.map(({ text }) => follows(text, frame)) : []
    })
    expect(scores.length).toBeGreaterThan(300)
    expect(scores.filter(score => score <= 0.5).length / scores.length).toBeGreaterThan(0.95)
  })
})
