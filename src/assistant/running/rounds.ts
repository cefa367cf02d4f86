// What the assistant does unasked, round after round: it gives reminders and keeps cards up to date.

import type { Assistant } from './assistant.ts'
import { createReminderClock, type ReminderParts } from './reminder-clock.ts'

export interface RoundsParts extends ReminderParts {
  /** Learns the rules that communities have set by way of other replicas. Never throws. */
  readonly learnRules: () => Promise<void>
  readonly assistant: Pick<Assistant, 'refreshCards' | 'settled'>
}

export interface Rounds {
  start(): void
  /** Resolves when what is under way has ended. */
  stop(): Promise<void>
}

const reminders_ms = 5000
const rules_ms = 60_000
/** A card is edited as soon as something changes; this mends what failed then, or a crash or a new version left. */
const cards_ms = 15 * 60_000

export function createRounds({ assistant, learnRules, ...parts }: RoundsParts): Rounds {
  const reminderClock = createReminderClock(parts)
  const rounds = [
    createRound(reminders_ms, reminderClock.strike),
    createRound(cards_ms, assistant.refreshCards),
    createRound(rules_ms, learnRules),
  ]
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
