// A reply to an answer of ours goes on from it, with what was told of dangers and what was only assumed.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { amended } from '../../../src/assistant/running/amend.ts'
import { type Asking, askingOf, otherMember } from '../../support/ask.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
beforeEach(async () => {
  asking = await askingOf(commands)
})
afterEach(() => endFaultless(asking))

/** What another member gets who replies so to the answer. */
async function replying(question: string, words: string) {
  const answer = await asking.ask(question)
  const next = amended(answer.question ?? '', words, asking.assistant.registry.vocabulary)
  return next && asking.assistant.answer(next, otherMember)
}

describe('a reply of another member', () => {
  it('changes a detail', async () => {
    const reply = await replying('how long for a 4s 1500 lipo at 1A from 3.7V', 'and at 1.5A?')
    expect(reply?.question).toBe('time pack: 4S 1500mAh LiPo current: 1.5A from: 3.7V per cell')
  })

  it('makes a danger no smaller', async () => {
    const reply = await replying('how long for my puffed 4s 1500 lipo at 1A from 3.7V', 'and at 0.5A?')
    expect(reply?.verdict).toBe('do not charge')
  })

  it('never makes sure of what was only assumed', async () => {
    const reply = await replying('how long for a 4s 1500 at 1A from 3.7V', 'and at 1.5A?')
    expect(reply?.verdict).toBe('go with care')
  })

  it('is heard for dangers of its own', async () => {
    const reply = await replying(
      'how long for a 4s 1500 lipo at 1A from 3.7V',
      'at 1.5A, i leave it on and go shopping',
    )
    expect(reply?.verdict).toBe('do not charge')
  })
})
