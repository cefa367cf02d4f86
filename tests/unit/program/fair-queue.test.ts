import { queueOptionsSymbol, type TaskQueue } from 'piscina'
import { expect, it } from 'vitest'
import { fairQueue } from '../../../src/program/workers/fair-queue.ts'

type Task = Parameters<TaskQueue['push']>[0]
const task = (name: string, club: string, member: string) =>
  ({ name, [queueOptionsSymbol]: { club, member } }) as unknown as Task & { readonly name: string }

function allOf(queue: TaskQueue): readonly string[] {
  const names: string[] = []
  for (let next = queue.shift(); next; next = queue.shift()) names.push((next as unknown as { name: string }).name)
  return names
}

it('lets clubs take turns, and in a club its members', () => {
  const queue = fairQueue()
  for (const name of ['a1', 'a2', 'a3']) queue.push(task(name, 'hill', 'ada'))
  queue.push(task('b1', 'hill', 'ben'))
  queue.push(task('c1', 'dale', 'cem'))
  expect(queue.size).toBe(5)
  expect(allOf(queue)).toEqual(['a1', 'c1', 'b1', 'a2', 'a3'])
  expect(queue.size).toBe(0)
})

it('loses none and gives none twice where some are taken back', () => {
  const queue = fairQueue()
  const tasks = Array.from({ length: 60 }, (_, at) => task(`${at}`, `club ${at % 3}`, `member ${at % 7}`))
  for (const one of tasks) queue.push(one)
  const back = tasks.filter((_, at) => at % 4 === 0)
  for (const one of [...back, ...back]) queue.remove(one)
  const names = allOf(queue)
  expect(names.toSorted()).toEqual(
    tasks
      .filter(one => !back.includes(one))
      .map(({ name }) => name)
      .toSorted(),
  )
})
