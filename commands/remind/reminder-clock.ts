// By whose clock a reminder is set for a time of day, and when that is.

import type { Context } from '../../src/assistant/context.ts'
import { type Clock, isOpen } from '../../src/language/quantities/clock.ts'
import { nextIn, zonesShowing } from '../../src/language/quantities/zoned-clock.ts'
import type { Reminder } from '../../src/memory/reminder.ts'
import { needsClock } from './reminder-problems.words.ts'

/**
 * The time zones that it may be: of whoever tells what their clock shows, else the club's, else the one by which they set
 * their last reminder. None where no clock is known.
 */
export function zonesOf(
  told: Clock | undefined,
  last: Reminder | undefined,
  { house, asked, now = new Date(0) }: Pick<Context, 'house' | 'asked' | 'now'>,
): readonly string[] {
  if (told) return zonesShowing(told, asked ? new Date(asked.at_ms) : now)
  const zone = house.clock ?? last?.zone
  return zone === undefined ? [] : [zone]
}

interface AtTime {
  readonly zone: string
  readonly wait_s: number
  /** Both halves of the day have it, and it was not said which is meant. */
  readonly isOpen: boolean
}

/** The soonest that it may be. Throws a Problem where no clock is known. */
export function waitUntil(clock: Clock, zones: readonly string[], now: Date): AtTime {
  const [soonest] = zones
    .map(zone => ({ zone, wait_s: (nextIn(zone, clock, now).getTime() - now.getTime()) / 1000, isOpen: isOpen(clock) }))
    .toSorted((a, b) => a.wait_s - b.wait_s)
  if (!soonest) throw needsClock()
  return soonest
}
