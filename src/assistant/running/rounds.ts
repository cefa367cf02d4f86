// What the assistant does unasked, round after round: all that is due, and learning what other replicas were told.

import type { DueLoop } from '../due/due-loop.ts'

export interface RoundsParts {
  readonly assistant: DueLoop & { settled(): Promise<void> }
  /** Learns the rules that communities have set by way of other replicas. Never throws. */
  readonly learnRules: () => Promise<void>
}

export interface Rounds {
  start(): void
  /** Resolves when what is under way has ended. */
  stop(): Promise<void>
}

const due_ms = 5000
const rules_ms = 60_000

export function createRounds({ assistant, learnRules }: RoundsParts): Rounds {
  let isBegun = false
  const strike = async () => {
    if (!isBegun) await assistant.begin()
    isBegun = true
    await assistant.strike()
  }
  const rounds = [createRound(due_ms, strike), createRound(rules_ms, learnRules)]
  return {
    start: () => {
      for (const round of rounds) round.start()
    },
    stop: async () => {
      await Promise.all(rounds.map(round => round.stop()))
      await assistant.settled()
    },
  }
}

/** At once, then every so often. A round that takes longer than that does not hold up the next. */
function createRound(every_ms: number, work: () => Promise<void>): Rounds {
  const underway = new Set<Promise<void>>()
  let timer: NodeJS.Timeout | undefined
  const round = () => {
    const working = work()
    underway.add(working)
    void working.finally(() => underway.delete(working))
  }
  return {
    start: () => {
      timer = setInterval(round, every_ms)
      round()
    },
    stop: async () => {
      clearInterval(timer)
      await Promise.all(underway)
    },
  }
}
