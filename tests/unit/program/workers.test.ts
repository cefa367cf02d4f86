import { afterAll, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { createAssistant } from '../../../src/assistant/running/assistant.ts'
import { drawPng } from '../../../src/charts/drawing/draw.ts'
import { openWorkers } from '../../../src/program/workers/workers.ts'
import { roomOccasion } from '../../../src/room/occasion.ts'
import { commandNamed } from '../../support/commands.ts'
import { openTestMemory } from '../../support/test-memory.ts'

const workers = openWorkers()
const memory = await openTestMemory()
const parts = { commands, memory, newSeed: () => 1, onFault: (fault: unknown) => expect.fail(String(fault)) }
const here = createAssistant(parts)
const there = createAssistant({ ...parts, plan: workers.plan })
const asking = (id: string) => ({ ...roomOccasion(), asker: { id, name: id, moderates: false } })

afterAll(async () => {
  await workers.close()
  await memory.close()
})

it.each(commandNamed('plan').examples)('a worker answers as it is answered here: %s', async question => {
  expect(await there.answer(question, asking('ada'))).toEqual(await here.answer(question, asking('ada')))
})

it('a picture is the same, byte for byte', async () => {
  const { charts } = await here.answer(commandNamed('plan').examples[0] ?? '', asking('ada'))
  const [chart] = charts
  if (!chart) throw new Error('no chart')
  const drawn = await workers.draw(chart, { club: 'hill', member: 'ada' })
  expect(Buffer.from(drawn)).toEqual(await drawPng(chart))
})

it('who asks too much at once is told so, can tap the same again, and holds nobody up', async () => {
  const [question = ''] = commandNamed('plan').examples
  const many = Array.from({ length: 30 }, () => there.answer(question, asking('eve')))
  const other = await there.answer(question, asking('ada'))
  expect(other.problem).toBeUndefined()
  const replies = await Promise.all(many)
  expect(workers.waited_s()).toBeGreaterThan(0)
  expect(workers.waited_s()).toBe(0)
  const refused = replies.filter(({ problem }) => problem)
  expect(refused.length).toBeGreaterThan(0)
  expect(refused.length).toBeLessThan(replies.length)
  for (const { headline, followUps, cautions, verdict } of refused) {
    expect(headline).toContain('too much at once')
    expect(followUps.map(one => one.question)).toEqual([question])
    expect(cautions.length).toBeGreaterThan(0)
    expect(verdict).toBeUndefined()
  }
})
