// What is offered in place of a word that cannot be read: what was meant by it, and never another fact.

import { afterAll, beforeAll, expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, askingOf } from '../../support/ask.ts'

let asking: Asking
beforeAll(async () => {
  asking = await askingOf(commands)
})
afterAll(() => asking.memory.close())

const offered = async (question: string) => {
  const { problem, followUps } = await asking.ask(question)
  expect(problem, question).toBeDefined()
  return followUps.map(one => one.question)
}

test('cells of another kind are named as such, and made into no lithium', async () => {
  const { problem } = await asking.ask('current pack: 5S 1450 NiMH')
  expect(problem?.what).toContain('I do not work out NiMH')
  expect((await offered('current pack: 5S 1450 NiMH')).join()).not.toContain('5S 1450')
})

test('a type that is like none is not made into the one with the highest volts', async () => {
  expect((await offered('current pack: 5S 1450 lithium')).join()).not.toContain('5S 1450')
})

test('a number without its unit is that number with one', async () => {
  expect(await offered('current pack: 5S 1450 LiPo temperature: 58')).toEqual([
    'current pack: 5S 1450 LiPo temperature: 58°C',
  ])
})
