// A question in words that tells where a pack stands or how warm it is: that is judged, whatever else is asked.

import { beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, askingOf } from '../../support/ask.ts'

let asking: Asking
beforeEach(async () => {
  asking = await askingOf(commands)
})

describe('where a pack stands', () => {
  it('is worked out, and the handbook says one line beside it', async () => {
    const reply = await asking.ask('charger stopped at 12.4 volts on my 3s and says finished, is it broken')
    expect(reply.readAs).toContain('3S LiPo, at 12.4V pack')
    expect(reply.headline).toMatch(/4\.13.V a cell \(12\.4.V for 3S\) at rest is about 94.%/)
  })

  it.each([
    'cell 3 reads 2.4 and the others 3.7 what now',
    'it says 6.9 volts on the 3s, what can i do about it',
    'the screen shows 2.1 per cell, is it broken',
    'it lay in the model for a month and shows 0.0V now, may I charge it gently',
    'my pack reads 1.3 V after the winter, safe to charge',
    'a 3S 900 reads 4.8 V, what now',
  ])('is refused where it is too low: %s', async text => {
    expect((await asking.ask(text)).verdict).toBe('do not charge')
  })

  it('is not told where somebody asks in general', async () => {
    const reply = await asking.ask('why does my 4s drop to 13.8 when i give throttle')
    expect(reply.command).toBe('handbook')
  })
})

describe('how warm a pack is', () => {
  it('forbids a charge of a hot or a frozen one', async () => {
    const hot = await asking.ask('mine is 50 degrees')
    expect([hot.verdict, hot.headline]).toEqual([
      'do not charge',
      expect.stringMatching(/Do not charge (?:at 50 °C|a hot)/),
    ])
    expect((await asking.ask('handbook temperature: -4°C about: first flight of the day')).verdict).toBe(
      'do not charge',
    )
  })

  it('says nothing of the air', async () => {
    const reply = await asking.ask('47 degrees outside, what does CV mean')
    expect(reply.verdict).not.toBe('do not charge')
  })
})

describe('what the handbook has nothing on', () => {
  it('is asked back, with what lies near', async () => {
    const { problem } = await asking.ask('what does the shape of a hinge say')
    expect(problem?.what).toMatch(/has nothing on that/)
  })

  it('is answered by what the nearest entries say, each by its name, without choosing between them', async () => {
    const reply = await asking.ask('old packs and leads on a shelf')
    expect(reply.headline).toMatch(/^Which of these do you mean\? ".+": .+/)
  })
})
