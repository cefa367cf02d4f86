// Reminders that are still to come.

import { type Database, inTransaction, oneAtATime } from '../database.ts'
import type { NewDue } from '../due.ts'
import { type Reminder, type ReminderMemory, reminderFrom } from '../reminder.ts'
import { dueMemory } from './due.ts'

const kind = 'reminder'
/** What could not be sent by then is of no use any more. */
const latest_ms = 24 * 3_600_000

export function reminderMemory(db: Database): ReminderMemory {
  const due = dueMemory(db)
  return {
    add: (reminders, most) =>
      inTransaction(db, async transaction => {
        const waiting = dueMemory(transaction)
        const people = [...new Set(reminders.map(({ person }) => person))]
        for (const person of people.toSorted()) {
          await oneAtATime(transaction, `reminders of ${person}`)
          const there = await waiting.of(person, kind)
          const added = reminders.filter(reminder => reminder.person === person)
          if (there.length + added.length > most) return 'full'
        }
        await waiting.add(...reminders.map(dueOf))
        return 'set'
      }),
    of: async person => (await due.of(person, kind)).map(reminderFrom),
    async cancel(person, code) {
      const theirs = (await due.of(person, kind)).map(reminderFrom)
      const ids = theirs.filter(one => code === undefined || one.code === code).map(({ id }) => id)
      if (ids.length === 0) return 0
      const { numDeletedRows } = await db.deleteFrom('due').where('id', 'in', ids).executeTakeFirst()
      return Number(numDeletedRows)
    },
  }
}

/** Whether somebody is with a charge is not asked once it may be over: the other reminder says that. */
function dueOf({ id, person, place, ...told }: Reminder): NewDue {
  const { dueAt, setAt, low_s } = told
  const over_ms = told.kind === 'stay' ? setAt.getTime() + low_s * 1000 : Number.POSITIVE_INFINITY
  const latestAt = new Date(Math.min(dueAt.getTime() + latest_ms, over_ms))
  return { id, kind, person, place, body: told, dueAt, latestAt }
}
