// The memory is away, slow or read-only: charging goes on by the rules that were known last, and saving says that it did not.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { createAssistant } from '../../../src/assistant/running/assistant.ts'
import type { Memory } from '../../../src/memory/memory.ts'
import { member, moderator } from '../../support/ask.ts'
import { openTestMemory } from '../../support/test-memory.ts'

type Trouble = 'none' | 'down' | 'slow' | 'slow to read' | 'read-only'
type Call = (...of: unknown[]) => Promise<unknown>

const reading =
  /^(?:rules|find|startingWith|list|asking|of|get|count|latest|changesOf|communities|export|learned|pending)$/
const away = () => Object.assign(new Error('connect ECONNREFUSED'), { code: 'ECONNREFUSED' })
const readOnly = () => Object.assign(new Error('cannot execute INSERT'), { code: '25006' })

/** The memory with a database that is in trouble. */
function troubled(memory: Memory, trouble: () => Trouble): Memory {
  const through =
    (name: string, call: Call): Call =>
    async (...given) => {
      if (trouble() === 'down') throw away()
      if (trouble() === 'slow') await new Promise(resolve => setTimeout(resolve, 5000))
      if (trouble() === 'slow to read' && reading.test(name)) await new Promise(resolve => setTimeout(resolve, 900))
      if (trouble() === 'read-only' && !reading.test(name)) throw readOnly()
      return call(...given)
    }
  const partThrough = (part: object) =>
    Object.fromEntries(Object.entries(part).map(([name, call]) => [name, through(name, call)]))
  const parts = Object.entries(memory).map(([key, part]) => [key, typeof part === 'object' ? partThrough(part) : part])
  return Object.fromEntries(parts) as Memory
}

let memory: Memory
let trouble: Trouble
let faults: unknown[]
let ask: (question: string, by?: typeof member) => ReturnType<ReturnType<typeof createAssistant>['answer']>

beforeEach(async () => {
  memory = await openTestMemory()
  trouble = 'none'
  faults = []
  const assistant = createAssistant({
    commands,
    memory: troubled(memory, () => trouble),
    onFault: fault => faults.push(fault),
    clock: () => new Date('2027-05-01T10:00:00Z'),
  })
  ask = (question, by = member) => assistant.answer(question, by)
  await ask('house set chemistry: LiPo rate: 0.5C', moderator)
  await ask('kit save name: wren pack: 3S 720 LiPo')
})
afterEach(() => memory.close())

const cautionsOf = ({ cautions }: { cautions: readonly { key: string }[] }) => cautions.map(({ key }) => key)
const question = 'current pack: 3S 1000 LiPo charger: 0.1-5A by 0.1 80W 1-6S 9-20V'

describe('with a memory that is away', () => {
  it('answers by the tightened limit that was known last, and says that it is not confirmed', async () => {
    const before = await ask(question)
    trouble = 'down'
    const reply = await ask(question)
    expect(reply.fault).toBeUndefined()
    expect(reply.lines).toEqual(before.lines)
    expect(reply.figures.find(({ key }) => key === 'setCurrent')?.value).toBe(0.5)
    expect(cautionsOf(before)).not.toContain('notLookedUp')
    expect(cautionsOf(reply)).toContain('notLookedUp')
  })

  it.each(['none', 'slow to read'] as const)('forgets no limit tightened in the moment before: %s', async before => {
    trouble = before
    await ask('house set chemistry: LiPo rate: 0.3C', moderator)
    trouble = 'down'
    const reply = await ask(question)
    expect(reply.figures.find(({ key }) => key === 'setCurrent')?.value).toBe(0.3)
  })

  it('answers within a second or so where it is slow', async () => {
    const plain = 'what current for my 3S 1000 LiPo pack on a charger with 0.1A steps'
    // The model is loaded with the first plain sentence.
    await ask(plain)
    trouble = 'slow'
    const since = performance.now()
    const reply = await ask(plain)
    expect(performance.now() - since).toBeLessThan(1200)
    expect(reply.fault).toBeUndefined()
    expect(cautionsOf(reply)).toContain('notLookedUp')
  })

  it('refuses what is dangerous as ever', async () => {
    trouble = 'down'
    const reply = await ask('my 3S 1000 LiPo is swollen, what current')
    expect(reply.verdict).toBe('do not charge')
    expect(cautionsOf(reply)).not.toContain('notLookedUp')
  })

  it('does not take a saved name for an unknown one in silence', async () => {
    trouble = 'down'
    const reply = await ask('current pack: wren')
    expect(reply.problem).toBeDefined()
    expect(cautionsOf(reply)).toContain('notLookedUp')
  })

  it.each(['down', 'read-only'] as const)('says that nothing was saved: %s', async now => {
    trouble = now
    for (const saving of ['kit save name: plover pack: 2S 450 LiPo', 'log charge name: wren put-back: 300mAh']) {
      const reply = await ask(saving)
      expect(String(reply.headline)).toBe('Not saved: my memory does not answer.')
      expect(reply.fault).toBeUndefined()
    }
    const rules = await ask('house set chemistry: LiPo rate: 2C', moderator)
    expect(String(rules.headline)).toBe('Not saved: my memory does not answer.')
  })

  it('never says that there is nothing where it cannot look', async () => {
    trouble = 'down'
    expect(String((await ask('kit list')).headline)).toBe('I cannot look that up: my memory does not answer.')
  })

  it('confirms the rules where it can only be read', async () => {
    trouble = 'read-only'
    expect(cautionsOf(await ask(question))).not.toContain('notLookedUp')
  })

  it('looks things up again by itself as soon as it is there', async () => {
    trouble = 'down'
    await ask(question)
    trouble = 'none'
    expect(cautionsOf(await ask(question))).not.toContain('notLookedUp')
    expect((await ask('current pack: wren')).problem).toBeUndefined()
  })

  it('still tells a fault of our own', async () => {
    const broken = { ...memory, house: { ...memory.house, rules: () => Promise.reject(new TypeError('ours')) } }
    const assistant = createAssistant({ commands, memory: broken, onFault: () => {} })
    expect((await assistant.answer(question, member)).fault).toBeDefined()
  })
})
