// Somebody who asks as fast as a script does is told so, kindly; everybody else, and whoever tells of danger, is answered.

import { afterEach, beforeEach, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { createAssistant } from '../../../src/assistant/running/assistant.ts'
import { withFairUse } from '../../../src/assistant/running/fair-use.ts'
import type { Memory } from '../../../src/memory/memory.ts'
import { member, moderator } from '../../support/ask.ts'
import { openTestMemory } from '../../support/test-memory.ts'

let memory: Memory
let now_ms: number
let ask: (question: string, by?: typeof member) => Promise<string>
beforeEach(async () => {
  memory = await openTestMemory()
  now_ms = 1e9
  const assistant = withFairUse(createAssistant({ commands, memory, onFault: () => {} }), () => now_ms)
  ask = async (question, by = member) => String((await assistant.answer(question, by)).headline)
})
afterEach(() => memory.close())

const question = 'current pack: 3S 720 LiHV'
const tooOften = 'That is a lot at once, and I want to be there for the others too.'
const askOften = async (times: number) => {
  const said = []
  for (let count = 0; count < times; count++) said.push(await ask(question))
  return said
}

it('answers thirty questions at once, and then one every two seconds', async () => {
  const said = await askOften(32)
  expect(said.slice(0, 30)).not.toContain(tooOften)
  expect(said.slice(30)).toEqual([tooOften, tooOften])
  now_ms += 2000
  expect(await askOften(2)).toEqual([said[0], tooOften])
  now_ms += 60_000
  expect(await askOften(30)).not.toContain(tooOften)
})

it('counts each place by itself, and all of them together', async () => {
  const inPlace = (id: number) => ({ ...member, place: { id: `room:${id}`, direct: false } })
  const said: string[] = []
  for (let at = 0; at < 310; at += 1) said.push(await ask(question, inPlace(at % 11)))
  expect(said.slice(0, 300)).not.toContain(tooOften)
  expect(new Set(said.slice(300))).toEqual(new Set([tooOften]))
})

it('counts what comes late by when it was asked', async () => {
  const asked = (at_ms: number) => ({ ...member, asked: { id: `test:${at_ms}`, at_ms, way: undefined, openFor_s: 60 } })
  for (let ago = 100; ago > 0; ago -= 1) expect(await ask(question, asked(now_ms - ago * 2000))).not.toBe(tooOften)
})

it('does not count against whoever asked long ago what was heard before it', async () => {
  const asked = (at_ms: number) => ({ ...member, asked: { id: `test:${at_ms}`, at_ms, way: undefined, openFor_s: 60 } })
  expect(await ask('my pack is smoking', asked(now_ms))).not.toBe(tooOften)
  expect(await ask(question, asked(now_ms - 300_000))).not.toBe(tooOften)
})

it('answers the others meanwhile', async () => {
  await askOften(40)
  expect(await ask(question, moderator)).not.toBe(tooOften)
})

it('answers at any time who tells of danger', async () => {
  await askOften(40)
  expect(await ask('my pack is smoking')).not.toBe(tooOften)
  expect(await ask('the 3S 720 LiHV is swollen, what current')).not.toBe(tooOften)
})

it('looks for dangers in a flood a question at a time', async () => {
  await askOften(30)
  let turns = 0
  let counting = setImmediate(function count() {
    turns += 1
    counting = setImmediate(count)
  })
  const said = await Promise.all(Array.from({ length: 60 }, () => ask(question)))
  clearImmediate(counting)
  expect(new Set(said)).toEqual(new Set([tooOften]))
  expect(turns).toBeGreaterThan(50)
})
