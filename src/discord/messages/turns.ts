// Whose words go out next in a channel. Discord takes a few in some seconds: what is urgent does not wait behind the others,
// nor anybody behind whoever asks much.

import { createQueue, type Queue, type Waiting } from '../../assistant/running/queue.ts'

interface Job extends Waiting {
  readonly send: () => Promise<void>
}

/** In a channel one is sent after another. */
export type Turns = <T>(channel: string, of: Waiting, send: () => Promise<T>) => Promise<T>

export function createTurns(): Turns {
  const queues = new Map<string, Queue<Job>>()

  async function goOn(channel: string, queue: Queue<Job>): Promise<void> {
    queues.set(channel, queue)
    for (let job = queue.next(); job; job = queue.next()) await job.send()
    queues.delete(channel)
  }

  return (channel, of, send) =>
    new Promise((resolve, reject) => {
      const underway = queues.get(channel)
      const queue = underway ?? createQueue<Job>()
      queue.add([{ ...of, send: () => send().then(resolve, reject) }])
      if (!underway) void goOn(channel, queue)
    })
}
