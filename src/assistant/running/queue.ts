// Whose turn it is in a room: a danger comes first, then what came first; nobody many times in a row while others wait.

export interface Waiting {
  readonly sender: string
  readonly urgent: boolean
}

export interface Queue<T extends Waiting> {
  add(some: readonly T[]): void
  /** Takes one out; undefined where none waits. */
  next(): T | undefined
  /** Takes out one that is urgent and that `mayPass` lets go while another is under way. */
  passing(mayPass: (one: T) => boolean): T | undefined
  isEmpty(): boolean
}

/** As many as somebody asks who tries a few values. */
const mostInARow = 3

export function createQueue<T extends Waiting>(): Queue<T> {
  let waiting: readonly T[] = []
  let last = ''
  let inARow = 0

  function chosen(): T | undefined {
    const urgent = waiting.find(one => one.urgent)
    const other = inARow < mostInARow ? undefined : waiting.find(({ sender }) => sender !== last)
    return urgent ?? other ?? waiting[0]
  }

  function take(one: T | undefined): T | undefined {
    waiting = waiting.filter(other => other !== one)
    return one
  }

  return {
    add: some => {
      waiting = [...waiting, ...some]
    },
    next() {
      const one = take(chosen())
      if (!one) return undefined
      inARow = one.sender === last ? inARow + 1 : 1
      last = one.sender
      return one
    },
    passing: mayPass => take(waiting.find(one => one.urgent && mayPass(one))),
    isEmpty: () => waiting.length === 0,
  }
}
