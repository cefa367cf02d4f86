// The lessons in use: read, asked, answered, kept over a restart, and each person by themselves.

import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import type { Reply } from '../../../src/assistant/reply.ts'
import { english } from '../../../src/ground/locale.ts'
import { findQuestion, lessons } from '../../../src/handbook/lessons/index.ts'
import { drawFrom } from '../../../src/handbook/teaching/draw.ts'
import { type Asking, askingOf, member, otherMember } from '../../support/ask.ts'
import { commandNamed } from '../../support/commands.ts'
import { endFaultless } from '../../support/end-faultless.ts'

const commands = ['time', 'lesson list', 'lesson read', 'lesson ask', 'lesson answer'].map(commandNamed)

let asking: Asking
let seed = 0
beforeEach(async () => {
  seed = 0
  asking = await askingOf(commands, { newSeed: () => ++seed })
})
afterEach(() => endFaultless(asking))

async function done(question: string, by?: Occasion) {
  const reply = await asking.ask(question, by)
  expect(reply.problem).toBeUndefined()
  return reply
}

/** The right answer to the question that waits. */
async function rightAnswer({ asker }: Occasion = member): Promise<string> {
  const pending = await asking.memory.lessons.pending(asker.id)
  const found = pending && findQuestion(pending.question)
  if (!found) throw new Error('no question waits')
  return found.question.draw(drawFrom(pending.seed), { house: {}, locale: english('.') }).right
}

const nextOf = ({ followUps }: Reply) => followUps.find(({ label }) => label === 'Next')?.question

test('a newcomer goes from the first lesson to the last', async () => {
  for (const [at, lesson] of lessons.entries()) {
    const read = await done('lesson read')
    expect(read.headline).toContain(`Lesson ${at + 1} of ${lessons.length}, ${lesson.title(english('.'))}`)
    let screen = read
    for (let next = nextOf(screen); next !== undefined; next = nextOf(screen)) screen = await done(next)
    expect(screen.headline).toContain('Example: ')
    for (const _ of lesson.questions) {
      await done('lesson ask')
      expect((await done(`lesson answer ${await rightAnswer()}`)).headline).toMatch(/^Right\./)
    }
  }
  expect((await done('lesson list')).headline).toContain('all 8 lessons')
  await done('lesson ask lesson: c-rate')
  expect((await done(`lesson answer ${await rightAnswer()}`)).headline).toMatch(/^Right\./)
})

test('a wrong answer is explained, and the same kind is asked again with other values', async () => {
  const first = await done('lesson ask lesson: c-rate')
  const wrong = await done('lesson answer 19A')
  expect(wrong.headline).toMatch(/^Not 19A, but [\d.]+A\. The rate times the amp-hours: /)
  expect(wrong.followUps.map(({ question }) => question)).toContain('lesson ask lesson: c-rate')
  const again = await done('lesson ask lesson: c-rate')
  expect(again.headline).toContain('How many amps')
  expect(again.headline).not.toBe(first.headline)
  expect((await done('lesson list')).working[1]).not.toContain('right')
})

test('an answer may come in any unit of its kind, within the tolerance that is told', async () => {
  const asked = await done('lesson ask lesson: c-rate')
  expect(asked.working.join()).toContain('within 2 %')
  const amps = Number.parseFloat(await rightAnswer())
  expect((await done(`lesson answer ${amps * 1010}mA`)).headline).toMatch(/^Right\./)
})

test('in a talk a bare answer is one: its number alone, or the number of a choice', async () => {
  await done('how long for a 3S 2200 LiPo')
  await done('quiz me')
  expect((await done((await rightAnswer()).replace(/[A-Z]+$/, ''))).headline).toMatch(/^Right\./)
  await done('lesson ask lesson: 3')
  const right = await rightAnswer()
  const shown = /^[a-h]$/.test(right) ? String('abcdefgh'.indexOf(right) + 1) : right
  expect((await done(shown)).headline).toMatch(/^Right\./)
})

test('behind another question a lesson is opened by its number, and "next" leads from lesson to lesson', async () => {
  await done('how long for a 2S 450 LiPo at 0.5A from 3.7V')
  await done('lesson 1')
  for (const expected of ['(2 of 3)', '(3 of 3)', 'Lesson 2 of 8'])
    expect((await done('next')).headline).toContain(expected)
})

test('what cannot be read costs nothing: the question still waits', async () => {
  await done('lesson ask lesson: c-rate')
  for (const strange of ['three cows', '1e3', '1,234A']) {
    expect((await asking.ask(`lesson answer ${strange}`)).problem, strange).toBeDefined()
  }
  expect((await done(`lesson answer ${await rightAnswer()}`)).headline).toMatch(/^Right\./)
})

test('asking again does not draw again, and another lesson takes its place', async () => {
  const first = await done('lesson ask lesson: label')
  expect((await done('lesson ask')).headline).toBe(first.headline)
  expect((await done('lesson ask lesson: label')).headline).toBe(first.headline)
  expect((await done('lesson ask lesson: storage')).headline).toContain('Storage')
  expect((await done('lesson ask')).headline).toContain('Storage')
})

test('the question waits over a restart', async () => {
  const before = await done('lesson ask lesson: balance')
  const { ask } = await askingOf(commands, { memory: asking.memory, newSeed: () => 999 })
  expect((await ask('lesson ask')).headline).toBe(before.headline)
  expect((await ask(`lesson answer ${await rightAnswer()}`)).headline).toMatch(/^Right\./)
})

test('a choice has a button for each letter, and takes letters and words', async () => {
  for (let times = 0; times < 2; times += 1) {
    await done('lesson ask lesson: balance')
    await done(`lesson answer ${await rightAnswer()}`)
  }
  await done('lesson ask lesson: place')
  const asked = await done('lesson ask lesson: place')
  const letters = asked.followUps.map(({ label }) => label).filter(label => label.length === 1)
  expect(letters).toEqual(['a', 'b', 'c'])
  const right = await rightAnswer()
  const words = asked.working.find(line => line.startsWith(`${right})`))?.slice(3)
  expect((await done(`lesson answer ${words}`)).headline).toMatch(/^Right\./)
})

test('everybody learns by themselves', async () => {
  await done('lesson ask lesson: label')
  expect((await done('lesson answer a', otherMember)).headline).toContain('No question waits')
  await done(`lesson answer ${await rightAnswer()}`)
  expect((await done('lesson list')).working[0]).toContain('1 of 3 right')
  expect((await done('lesson list', otherMember)).working[0]).not.toContain('right')
})

test('one answer counts once', async () => {
  await done('lesson ask lesson: label')
  const right = await rightAnswer()
  const replies = await Promise.all([done(`lesson answer ${right}`), done(`lesson answer ${right}`)])
  expect(replies.filter(({ headline }) => headline.startsWith('Right.'))).toHaveLength(1)
  expect((await done(`lesson answer ${right}`)).headline).toContain('No question waits')
})

test('a question that there is no longer is let go', async () => {
  await asking.memory.lessons.ask(member.asker.id, { question: 'label/colour', seed: 1 })
  expect((await done('lesson answer a')).headline).toContain('No question waits')
  expect((await done('lesson ask')).headline).toContain('Lesson 1 of 8')
})

test('an unknown lesson is refused with those that there are', async () => {
  const { problem } = await asking.ask('lesson read lesson: aerobatics')
  expect(problem?.token).toBe('aerobatics')
  expect(problem?.expected).toContain('c-rate')
})

test.each([
  ['lesson storage', 'Storage'],
  ['read me the lesson about where to charge', 'Where and how to charge'],
  ['lesson three please', 'The cutoff voltage'],
])('%s is the lesson that it names', async (question, title) => {
  expect((await done(question)).headline).toContain(title)
})

test('a lesson beyond the last says how many there are, and a question takes a bare answer', async () => {
  const { problem, followUps } = await asking.ask('lesson 99')
  expect([problem?.what, problem?.token, followUps[0]?.question]).toEqual(['There are 8 lessons.', '99', 'lesson list'])
  expect((await asking.ask('lesson ask lesson: c-rate')).working[0]).toMatch(
    /^Just type amps, within 2.%, like 1\.23A$/,
  )
})
