// What waits for a worker: clubs take turns, and within a club its members, so that nobody waits behind one who asks much.

import { queueOptionsSymbol, type TaskQueue } from 'piscina'
import type { Turn } from '../../assistant/occasion.ts'

type Task = Parameters<TaskQueue['push']>[0]
/** Of each member in the order in which they came. */
type Waiting = Map<string, Task[]>

export function fairQueue(): TaskQueue {
  /** Whoever stands first is next, and then goes to the end. */
  const clubs = new Map<string, Waiting>()
  let size = 0

  function take(task: Task, { club, member }: Turn): void {
    const waiting = clubs.get(club)
    const left = waiting?.get(member)?.filter(one => one !== task) ?? []
    waiting?.delete(member)
    clubs.delete(club)
    if (left.length > 0) waiting?.set(member, left)
    if (waiting && waiting.size > 0) clubs.set(club, waiting)
    size -= 1
  }

  const first = (): Task | undefined => {
    const [waiting] = clubs.values()
    return waiting?.values().next().value?.[0]
  }

  return {
    get size() {
      return size
    },
    push: task => {
      const { club, member } = turnOf(task)
      const waiting: Waiting = clubs.get(club) ?? new Map()
      waiting.set(member, [...(waiting.get(member) ?? []), task])
      clubs.set(club, waiting)
      size += 1
    },
    shift: () => {
      const task = first()
      if (!task) return null
      take(task, turnOf(task))
      return task
    },
    remove: task => {
      const { club, member } = turnOf(task)
      if (clubs.get(club)?.get(member)?.includes(task)) take(task, { club, member })
    },
  }
}

const turnOf = (task: Task): Turn => task[queueOptionsSymbol] as Turn
