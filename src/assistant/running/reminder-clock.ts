// Gives reminders when they are due: each once, whatever the number of replicas, and late ones after a downtime.

import { english, type Locale } from '../../ground/locale.ts'
import type { Reminder, ReminderMemory } from '../../memory/reminder.ts'
import type { Missing, Noticeboards } from '../cards/noticeboard.ts'
import type { FaultListener } from '../fault-listener.ts'
import { reminderReply } from './reminder.words.ts'

export interface ReminderParts {
  readonly reminders: ReminderMemory
  readonly noticeboard: Noticeboards
  readonly clock: () => Date
  readonly onFault: FaultListener
  /** English where absent. */
  readonly locale?: Locale
}

/** Long enough for a platform that answers slowly, short enough that a crash delays no reminder for long. */
const lease_s = 120
/** What could not be sent by then is of no use any more. */
const latest_ms = 24 * 3_600_000

export interface ReminderClock {
  /** Gives all that is due now. Never throws. */
  strike(): Promise<void>
}

export function createReminderClock({
  reminders,
  noticeboard,
  clock,
  onFault,
  locale = english('.'),
}: ReminderParts): ReminderClock {
  /** A slow send may outlast its lease: we do not start it twice ourselves. */
  const underway = new Set<string>()

  async function give(reminder: Reminder): Promise<void> {
    if (underway.has(reminder.id)) return
    underway.add(reminder.id)
    try {
      const now = clock()
      if (!isPointless(reminder, now)) await send(reminder, now)
      await reminders.done(reminder.id)
    } catch (fault) {
      // Left to be taken again when its lease is over.
      onFault(fault, 'a reminder')
    } finally {
      underway.delete(reminder.id)
    }
  }

  /** By the other way where the one that was chosen is closed: a reminder that nobody sees protects nobody. */
  async function send(reminder: Reminder, now: Date): Promise<void> {
    const { id, person, place, channel } = reminder
    const notice = { reply: reminderReply(reminder, now, locale), key: id, calls: person }
    const here = () => noticeboard.post(place, notice)
    const direct = () => noticeboard.direct(person, notice)
    const [chosen, other] = channel === 'here' ? [here, direct] : [direct, here]
    const first = await chosen()
    if (!isMissing(first)) return
    const second = await other()
    if (!isMissing(second)) return
    const why = [first, second].map(({ missing }) => missing(english('.')))
    onFault(new Error(why.join(' ')), 'a reminder reached nobody')
  }

  return {
    strike: async () => {
      try {
        const claim = () => reminders.claim(clock(), lease_s, noticeboard.reachable())
        for (let due = await claim(); due.length > 0; due = await claim()) await Promise.all(due.map(give))
      } catch (fault) {
        onFault(fault, 'looking for reminders')
      }
    },
  }
}

const isMissing = (outcome: unknown): outcome is Missing =>
  typeof outcome === 'object' && outcome !== null && 'missing' in outcome

/** Too late, or asking whether somebody is with a charge that may be over: the other reminder says that. */
function isPointless({ kind, setAt, dueAt, low_s }: Reminder, now: Date): boolean {
  const isOver = now.getTime() >= setAt.getTime() + low_s * 1000
  return now.getTime() - dueAt.getTime() > latest_ms || (kind === 'stay' && isOver)
}
