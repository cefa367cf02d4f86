// The small parts: custom ids, ids seen, work in flight, who moderates.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { layers } from '../../../src/assistant/layers/opened.ts'
import { isShort, readCustomId, writeCustomId } from '../../../src/discord/messages/custom-id.ts'
import { moderates } from '../../../src/discord/platform/occasion.ts'
import { createRecentIds } from '../../../src/discord/platform/recent-ids.ts'
import { createInFlight } from '../../../src/ground/in-flight.ts'

describe('custom ids', () => {
  it('come back as they were given and fit', () => {
    const deed = fc.constantFrom('brief', ...layers)
    const id = fc.stringMatching(/^[\w-]{16}$/).map(id => ({ id }))
    const whole = fc.string({ maxLength: 120 }).filter(isShort)
    fc.assert(
      fc.property(
        deed,
        fc.oneof(
          id,
          whole.map(whole => ({ whole })),
        ),
        (deed, question) => {
          const customId = writeCustomId({ deed, question })
          expect(customId.length).toBeLessThanOrEqual(100)
          expect(readCustomId(customId)).toEqual({ deed, question })
        },
      ),
    )
  })

  it('that we did not write are not read', () => {
    fc.assert(
      fc.property(fc.string(), text => {
        const read = readCustomId(text)
        if (read) expect(writeCustomId(read)).toBe(text)
      }),
    )
    expect(
      ['', 'v1:brief:', 'v2:brief:', 'v3:brief:AAAAAAAAAAAAAAAA', 'v1:brief:AAAAAAAAAAAAAAAA\n'].map(readCustomId),
    ).toEqual(Array(5).fill(undefined))
  })
})

describe('recent ids', () => {
  it('are new once, until forgotten', () => {
    const ids = createRecentIds(2)
    expect(['a', 'a', 'b', 'c', 'a', 'c'].map(ids.isNew)).toEqual([true, false, true, true, true, false])
  })
})

describe('work in flight', () => {
  it('has settled when all of it has ended, well or not', async () => {
    const inFlight = createInFlight()
    const ended: string[] = []
    inFlight.add(Promise.reject(new Error('no')).finally(() => ended.push('bad')))
    inFlight.add(new Promise(resolve => setTimeout(resolve, 5)).then(() => ended.push('good')))
    await inFlight.settled()
    expect(ended).toEqual(['bad', 'good'])
  })
})

describe('moderates', () => {
  // Bits of https://docs.discord.com/developers/topics/permissions
  it.each([
    ['Manage Messages', 1n << 13n, true],
    ['Manage Server', 1n << 5n, true],
    ['Administrator', 1n << 3n, true],
    ['Send Messages', 1n << 11n, false],
    ['Kick Members', 1n << 1n, false],
    ['nothing', 0n, false],
  ])('with %s', (_, permissions, expected) => expect(moderates(permissions)).toBe(expected))
})
