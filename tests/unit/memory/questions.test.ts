// Kept questions and answered messages.

import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Memory } from '../../../src/memory/memory.ts'
import { openTestMemory } from '../../support/test-memory.ts'

let memory: Memory
beforeEach(async () => {
  memory = await openTestMemory()
})
afterEach(() => memory.close())

test('a question is found again under the 16 characters that it was given', async () => {
  const id = await memory.questions.keep('current pack: 3S 720mAh LiHV')
  expect(id).toMatch(/^[\w-]{16}$/)
  expect(await memory.questions.find(id)).toBe('current pack: 3S 720mAh LiHV')
})

test('the same question has the same id, another question another', async () => {
  const first = await memory.questions.keep('help')
  expect(await memory.questions.keep('help')).toBe(first)
  expect(await memory.questions.keep('help ')).not.toBe(first)
})

test('an unknown id finds nothing', async () => {
  expect(await memory.questions.find('0123456789abcdef')).toBeUndefined()
})

const answered = {
  place: 'discord:1',
  askedBy: 'discord:2',
  questionMessage: 'discord:3',
  answerMessage: 'discord:4',
  question: 'time pack: 3S 720mAh LiHV current: 1A',
  answeredAt: new Date('2031-05-04T10:00:00.250Z'),
}

test('an answered question is found by either message', async () => {
  await memory.answered.record(answered)
  expect(await memory.answered.byQuestion('discord:3')).toEqual(answered)
  expect(await memory.answered.byAnswer('discord:4')).toEqual(answered)
  expect(await memory.answered.byAnswer('discord:3')).toBeUndefined()
})

test('recorded again, the later answer holds', async () => {
  await memory.answered.record(answered)
  const later = { ...answered, answerMessage: 'discord:5', question: 'help' }
  await memory.answered.record(later)
  expect(await memory.answered.byQuestion('discord:3')).toEqual(later)
  expect(await memory.answered.byAnswer('discord:4')).toBeUndefined()
})

test('what is older than a time is dropped, and only that', async () => {
  const newer = { ...answered, questionMessage: 'discord:6', answerMessage: 'discord:7' }
  await memory.answered.record(answered)
  await memory.answered.record({ ...newer, answeredAt: new Date('2031-05-04T10:00:00.251Z') })
  await memory.forgetOld(new Date(Date.parse('2031-05-04T10:00:00.251Z') + 90 * 86_400_000))
  expect(await memory.answered.byQuestion('discord:3')).toBeUndefined()
  expect(await memory.answered.byQuestion('discord:6')).toBeDefined()
})

test('a question is kept for a year after it was last asked, an answered message for ninety days', async () => {
  const now = new Date()
  const daysOn = (days: number) => new Date(now.getTime() + days * 86_400_000)
  const id = await memory.questions.keep('help')
  await memory.answered.record({ ...answered, answeredAt: now })
  const kept = async () => [await memory.questions.find(id), (await memory.answered.byQuestion('discord:3'))?.question]
  await memory.forgetOld(daysOn(90))
  expect(await kept()).toEqual(['help', answered.question])
  await memory.forgetOld(daysOn(91))
  expect(await kept()).toEqual(['help', undefined])
  await memory.forgetOld(daysOn(365))
  expect(await kept()).toEqual(['help', undefined])
  await memory.forgetOld(daysOn(366))
  expect(await kept()).toEqual([undefined, undefined])
})
