// What is answered long after it was asked: never a plain go, with when it was asked, and asked about before it is done.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import { type Asking, askingOf, member } from '../../support/ask.ts'
import { endFaultless } from '../../support/end-faultless.ts'

const now = new Date('2026-06-01T12:00:00Z')
const current = 'current pack: 3S 720 LiHV charger: 0.5/1/2/4A'
const save = 'kit save name: wren pack: 3S 720 LiHV'

let asking: Asking

beforeEach(async () => {
  asking = await askingOf(commands, { clock: () => now })
})

afterEach(() => endFaultless(asking))

let ids = 0
const agoBy = (minutes: number): Occasion => ({
  ...member,
  asked: { id: `test:${++ids}`, at_ms: now.getTime() - minutes * 60_000, way: undefined, openFor_s: 3600 },
})
const saved = () => asking.memory.kit.count({ scope: 'person', id: member.asker.id })

describe('what only calculates', () => {
  it('is answered as ever within ten minutes', async () => {
    const reply = await asking.ask(current, agoBy(10))
    expect(reply.verdict).toBe('go')
    expect(reply.headline).not.toContain('ago')
  })

  it.each([current, 'what current for my 3s 720 hv on a 0.5/1/2/4 A charger'])(
    'is no plain go later than that, and says when it was asked: %s',
    async question => {
      const reply = await asking.ask(question, agoBy(11))
      expect(reply.verdict).toBe('go with care')
      expect(reply.lines[0]).toContain('may have changed')
      expect(reply.lines[0]).toContain('You asked this 11 min ago.')
    },
  )

  it('stays no plain go when it is opened again or gone on from', async () => {
    const { question = '', followUps } = await asking.ask(current, agoBy(90))
    expect((await asking.ask(question)).verdict).toBe('go with care')
    expect((await asking.ask(followUps[0]?.question ?? '')).verdict).not.toBe('go')
  })

  it('says when it was asked, whatever it is answered', async () => {
    for (const question of ['what is storage charge', 'hello', 'current pack: 3S', 'fdjk'])
      expect((await asking.ask(question, agoBy(60 * 20))).headline).toContain('You asked this 20 h ago.')
  })
})

describe('a danger', () => {
  it('is refused first', async () => {
    const { verdict, lines } = await asking.ask('my pack is on fire', agoBy(60 * 48))
    expect(verdict).toBe('do not charge')
    expect(lines[0]).toMatch(/^(?!You asked).*You asked this 48 h ago\.$/)
  })
})

describe('what changes something', () => {
  it('is done within ten minutes', async () => {
    expect((await asking.ask(save, agoBy(9))).problem).toBeUndefined()
    expect(await saved()).toBe(1)
  })

  it('is asked about later than that, and done on a yes', async () => {
    const { problem, headline } = await asking.ask(save, agoBy(11))
    expect(problem?.what).toContain('Shall I do this? Saves a pack')
    expect(headline).toContain('You asked this 11 min ago.')
    expect(await saved()).toBe(0)
    await asking.ask('yes', agoBy(0))
    expect(await saved()).toBe(1)
  })

  it('is done by the choice that stands below it', async () => {
    const [yes] = (await asking.ask(save, agoBy(11))).followUps
    await asking.ask(yes?.question ?? '', agoBy(0))
    expect(await saved()).toBe(1)
  })
})
