// The handbook in the chat.

import { beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, askingOf } from '../../support/ask.ts'

/** It asks of nothing that the handbook has, and may tell of a pack in a suitcase. */
const doubtful = 'do you guys discharge before flying home or is half full in the suitcase fine'

let asking: Asking
beforeAll(async () => {
  asking = await askingOf(commands)
})

describe('handbook', () => {
  it('answers first, then says what to do; why, and who says so, is opened', async () => {
    const reply = await asking.ask('handbook why is the last bit so slow')
    expect(reply.verdict).toBeUndefined()
    expect(reply.headline).toMatch(/^Near full the charger holds the volts/)
    expect(reply.lines).toHaveLength(2)
    expect(reply.working).toHaveLength(2)
    expect(reply.working[1]).toMatch(/^From: /)
    expect(reply.followUps.length).toBeGreaterThan(1)
    expect(reply.followUps[0]?.question).toMatch(/^time pack: /)
    for (const { question } of reply.followUps) expect((await asking.ask(question)).problem).toBeUndefined()
  })

  it('leaves the verdict to the envelope where leave is asked, and says why below it', async () => {
    const reply = await asking.ask('handbook about: may i let it charge while i sleep: it is only 1A')
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toMatch(/^Never leave a charge alone/)
    expect(reply.working[0]).toMatch(/smoke/)
  })

  it('explains without a verdict where the reason is asked', async () => {
    const reply = await asking.ask('handbook why is there no charging overnight')
    expect(reply.verdict).toBeUndefined()
    expect(reply.headline).toMatch(/^No: nobody watches/)
  })

  it('puts what must be known before the answer', async () => {
    const reply = await asking.ask('handbook can a dead pack go in the bin')
    expect(reply.verdict).toBe('go with care')
    expect(reply.headline).toMatch(/^Never into the bin/)
  })

  it('gives first aid whatever the words around it', async () => {
    const reply = await asking.ask('handbook battery liquid on my fingers')
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toMatch(/running water for 20 minutes/)
  })

  it('is asked again in the words of the handbook', async () => {
    const reply = await asking.ask('handbook my neighbour Otto wants to know what a C rate is')
    expect(reply.question).toBe('handbook about: What 1C means')
    const again = await asking.ask(reply.question ?? '')
    expect(again.headline).toBe(reply.headline)
    const refused = await asking.ask('handbook about: Otto asks: may he charge overnight on the balcony')
    expect((await asking.ask(refused.question ?? '')).headline).toBe(refused.headline)
  })

  it('says that it has nothing, and what lies near', async () => {
    const none = await asking.ask('handbook a recipe for pancakes')
    expect(none.headline).toMatch(/has nothing on that/)
    expect(none.verdict).toBeUndefined()
    const near = await asking.ask('handbook the crates in the van')
    expect(near.headline).toMatch(/^(?:Which of these do you mean|The nearest that the handbook has)/)
    expect(near.followUps.length).toBeGreaterThan(0)
    // What was asked is not kept, but asked again it says the same.
    for (const reply of [none, near]) {
      expect(reply.question).not.toMatch(/pancakes|crates/)
      expect((await asking.ask(reply.question ?? '')).headline).toBe(reply.headline)
    }
  })

  it('stands before a list and a figure of no pack that its words only sound like', async () => {
    for (const [question, title] of [
      ['shall I keep batteries in the fridge as we did with film', 'Packs in the fridge'],
      ['is my cell checker accurate', 'Is the reading right? Charger, checker, meter'],
    ] as const) {
      const reply = await (await askingOf(commands)).ask(question)
      expect([reply.command, reply.readAs]).toEqual(['handbook', expect.stringContaining(title)])
    }
  })

  it('says what lies near beside a danger that may be meant', async () => {
    const reply = await (await askingOf(commands)).ask(doubtful)
    expect(reply.verdict).toBe('go with care')
    expect(reply.followUps.some(({ question }) => question.startsWith('handbook about: '))).toBe(true)
  })

  it.each([
    ['is charging at 7 celsius possible', 'go with care', /from 0 to 10 °C gently/],
    ['the packs are at 4°C, shall i charge them', 'go with care', /under 5 °C at a fifth/],
    ['may we charge at 43 degrees', 'go with care', /to 45 °C only with care/],
    ['my pack is at 48 degrees, may i charge it', 'do not charge', /48 °C/],
  ])('judges a charge by how warm the cells are: %s', async (question, verdict, said) => {
    const reply = await (await askingOf(commands)).ask(question)
    expect([reply.verdict, reply.headline]).toEqual([verdict, expect.stringMatching(said)])
  })
})
