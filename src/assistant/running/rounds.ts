// What the assistant does unasked, round after round: all that is due, and learning what other replicas were told.

import { createInFlight } from '../../ground/in-flight.ts'
import type { DueLoop } from '../due/due-loop.ts'

interface RoundsParts {
  readonly assistant: DueLoop & { settled(): Promise<void> }
  /** Learns the rules that communities have set by way of other replicas. Never throws. */
  readonly learnRules: () => Promise<void>
}

const due_ms = 5000
const rules_ms = 60_000

export function createRounds({ assistant, learnRules }: RoundsParts) {
  const underway = createInFlight()
  const timers: NodeJS.Timeout[] = []
  /** At once, then every so often. A round that takes longer than that does not hold up the next. */
  const every = (time_ms: number, work: () => Promise<void>) => {
    timers.push(setInterval(() => underway.add(work()), time_ms))
    underway.add(work())
  }
  return {
    start: () => {
      const begun = assistant.begin()
      every(due_ms, () => begun.then(() => assistant.strike()))
      every(rules_ms, learnRules)
    },
    /** Resolves when what is under way has ended. */
    stop: async () => {
      for (const timer of timers) clearInterval(timer)
      await underway.settled()
      await assistant.settled()
    },
  }
}

export type Rounds = ReturnType<typeof createRounds>
