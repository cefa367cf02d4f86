// What many ask with the same values is computed once, and nobody gets what holds for somebody else.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import { type Asking, askingOf, member, moderator, otherMember } from '../../support/ask.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
let now = new Date('2026-06-01T12:00:00Z')

beforeEach(async () => {
  now = new Date('2026-06-01T12:00:00Z')
  asking = await askingOf(commands, { clock: () => now })
})
afterEach(() => endFaultless(asking))

const asks = (command: string, options: Readonly<Record<string, string>>, by: Occasion = member) =>
  asking.assistant.answer({ command, options }, by)
const values = { pack: '3S 720 LiHV', charger: '0.1-5A by 0.1' }

describe('what was asked before with the same values', () => {
  it('is the same reply for everybody, who can go on from it', async () => {
    const first = await asks('current', values)
    expect(await asks('current', values, otherMember)).toBe(first)
    const { readAs } = await asking.ask('and at 0.4A', otherMember)
    expect(readAs).toContain('3S 720mAh LiHV')
  })

  it('is computed anew where the rules have changed', async () => {
    const before = await asks('current', values)
    await asking.ask('house set chemistry: LiHV rate: 0.5C', moderator)
    const after = await asks('current', values)
    expect(before.figures.find(({ key }) => key === 'setCurrent')?.value).toBe(0.7)
    expect(after.figures.find(({ key }) => key === 'setCurrent')?.value).toBe(0.3)
  })

  it('is computed anew where a name stands for something else', async () => {
    await asking.ask('kit save name: wren pack: 3S 720 LiHV')
    await asking.ask('kit save name: wren pack: 2S 450 LiPo', otherMember)
    expect((await asks('current', { pack: 'wren' })).readAs).toContain('3S 720mAh LiHV')
    expect((await asks('current', { pack: 'wren' }, otherMember)).readAs).toContain('2S 450mAh LiPo')
  })

  it('is judged anew for whoever told of a danger', async () => {
    const before = await asks('current', values)
    await asking.ask('my 3s 720 lihv is puffed', otherMember)
    expect((await asks('current', values, otherMember)).verdict).toBe('do not charge')
    expect(await asks('current', values)).toBe(before)
  })

  it('shows the clock of its own minute', async () => {
    const timed = () => asks('time', { pack: '3S 720 LiHV', current: '0.7A' })
    const at = async () => (await timed()).working.find(line => line.includes('by my clock'))
    const before = await at()
    now = new Date('2026-06-01T12:01:00Z')
    expect(await at()).not.toBe(before)
  })

  it('points to the standard answer of each club', async () => {
    await asks('current', values)
    await asking.ask('answer save title: wren question: current pack: 3S 720 LiHV charger: 0.1-5A by 0.1', moderator)
    expect((await asks('current', values)).seeAlso).toContain('wren')
    expect((await asks('current', values, { ...member, community: { id: 'room:other' } })).seeAlso).toBeUndefined()
  })
})
