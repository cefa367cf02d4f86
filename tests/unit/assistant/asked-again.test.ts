// A question that a button or a follow-up asks again is judged as it was when it was asked in words.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, askingOf, otherMember } from '../../support/ask.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
beforeEach(async () => {
  asking = await askingOf(commands)
})
afterEach(() => endFaultless(asking))

const told = {
  'a type that was assumed': 'what amps for a 4s 1500',
  'a danger': 'what amps for my puffed 4s 1500 lipo',
  'words that were not understood': 'what amps for a 4s 1500 lipo flibbertig',
}

describe('asked again by anybody, anywhere', () => {
  for (const [what, question] of Object.entries(told)) {
    it(`is judged with ${what}`, async () => {
      const first = await asking.ask(question)
      expect(first.verdict).not.toBe('go')
      const again = await asking.ask(first.question ?? '', otherMember)
      expect([again.verdict, again.headline]).toEqual([first.verdict, first.headline])
      expect(again.question).toBe(first.question)
    })
  }

  it('so is what is offered next', async () => {
    const { followUps } = await asking.ask('how long for a 4s 1500 at 1A from 3.7V')
    const next = followUps.filter(({ question }) => question.includes('pack:') && !question.startsWith('remind'))
    expect(next.length).toBeGreaterThan(0)
    for (const { question } of next) {
      const reply = await asking.ask(question, otherMember)
      expect([question, reply.verdict]).not.toEqual([question, 'go'])
    }
  })

  it('what is told must be known', async () => {
    const reply = await asking.ask('current pack: 4S 1500 LiPo told: gremlins')
    expect(reply.problem?.token).toBe('told:')
  })
})
