// Plans and pictures off the thread of the connections: it only receives, defers and delivers.

import { availableParallelism } from 'node:os'
import { Piscina, queueOptionsSymbol } from 'piscina'
import { tooMuchAtOnce } from '../../assistant/asking/asking.words.ts'
import type { Draw } from '../../assistant/draw.ts'
import type { Turn } from '../../assistant/occasion.ts'
import type { FieldPlan, FieldSession } from '../../charging/plan/field.ts'
import { fairQueue } from './fair-queue.ts'

export interface Workers {
  /** Rejects with `tooMuchAtOnce` where the asker has too much under way already, or it takes too long. */
  plan(field: FieldSession, turn: Turn): Promise<FieldPlan>
  readonly draw: Draw
  /** How many of them wait. */
  waiting(): number
  /** The longest that one has waited since this was last asked. */
  waited_s(): number
  /** Ends what is under way. */
  close(): Promise<void>
}

/** So much of one member waits; of all members together; and so long at most. */
const [mostOfMember, mostWaiting, longest_ms] = [6, 300, 60_000]
/** A worker that nobody needs gives its memory back. */
const idle_ms = 60_000

export function openWorkers(): Workers {
  const pool = new Piscina({
    filename: new URL('./work.ts', import.meta.url).href,
    minThreads: 0,
    maxThreads: Math.max(1, availableParallelism() - 1),
    idleTimeout: idle_ms,
    taskQueue: fairQueue(),
  })
  const under = new Map<string, number>()

  async function run<R>(name: 'plan' | 'draw', task: object, turn: Turn): Promise<R> {
    const key = `${turn.club} ${turn.member}`
    const mine = under.get(key) ?? 0
    if (mine >= mostOfMember || pool.queueSize >= mostWaiting) throw tooMuchAtOnce
    under.set(key, mine + 1)
    try {
      const signal = AbortSignal.timeout(longest_ms)
      return await pool.run(Object.assign(task, { [queueOptionsSymbol]: turn }), { name, signal })
    } catch (error) {
      throw error instanceof Error && error.name === 'AbortError' ? tooMuchAtOnce : error
    } finally {
      const left = (under.get(key) ?? 1) - 1
      if (left > 0) under.set(key, left)
      else under.delete(key)
    }
  }

  return {
    plan: (field, turn) => run('plan', { ...field }, turn),
    draw: (chart, turn, theme) => run('draw', { chart, theme }, turn),
    waiting: () => pool.queueSize,
    waited_s: () => {
      const { max: longest_ms } = pool.histogram.waitTime
      pool.histogram.resetWaitTime()
      return longest_ms / 1000
    },
    close: () => pool.destroy(),
  }
}
