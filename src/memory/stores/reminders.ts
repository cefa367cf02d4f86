// Reminders that are still to come; one that was given is deleted.

import type { Selectable } from 'kysely'
import { type Database, inTransaction, oneAtATime, type Tables } from '../database.ts'
import type { Reminder, ReminderMemory } from '../reminder.ts'

/** At once. */
const mostClaimed = 50

export function reminderMemory(db: Database): ReminderMemory {
  return {
    add: (reminders, most) =>
      inTransaction(db, async transaction => {
        const people = [...new Set(reminders.map(({ person }) => person))]
        for (const person of people.toSorted()) {
          await oneAtATime(transaction, `reminders of ${person}`)
          const there = await remindersOf(transaction, person).execute()
          const added = reminders.filter(reminder => reminder.person === person)
          if (there.length + added.length > most) return 'full'
        }
        await transaction.insertInto('reminders').values(reminders.map(toRow)).execute()
        return 'set'
      }),
    async of(person) {
      return (await remindersOf(db, person).orderBy('due_at').execute()).map(reminderFromRow)
    },
    async cancel(person, code) {
      const ofPerson = db.deleteFrom('reminders').where('person', '=', person)
      const { numDeletedRows } = await (code === undefined
        ? ofPerson
        : ofPerson.where('code', '=', code)
      ).executeTakeFirst()
      return Number(numDeletedRows)
    },
    async claim(now, lease_s, surfaces) {
      if (surfaces.length === 0) return []
      const time = now.toISOString()
      const due = db
        .selectFrom('reminders')
        .select('id')
        .where('due_at', '<=', time)
        .where('leased_until', '<=', time)
        .where(({ eb, or }) => or(surfaces.map(surface => eb('place', 'like', `${surface}%`))))
        .orderBy('due_at')
        .limit(mostClaimed)
      const rows = await db
        .updateTable('reminders')
        .set({ leased_until: new Date(now.getTime() + lease_s * 1000).toISOString() })
        .where('id', 'in', due)
        // Said again, as PostgreSQL looks at this once more where another replica was first.
        .where('leased_until', '<=', time)
        .returningAll()
        .execute()
      return rows.map(reminderFromRow)
    },
    async done(id) {
      await db.deleteFrom('reminders').where('id', '=', id).execute()
    },
  }
}

export const remindersOf = (db: Database, person: string) =>
  db.selectFrom('reminders').selectAll().where('person', '=', person)
type Row = Selectable<Tables['reminders']>

const toRow = ({ setAt, dueAt, ...reminder }: Reminder): Row => ({
  ...reminder,
  set_at: setAt.toISOString(),
  due_at: dueAt.toISOString(),
  leased_until: '',
})

export const reminderFromRow = ({ set_at, due_at, leased_until: _, ...row }: Row): Reminder => ({
  ...row,
  setAt: new Date(set_at),
  dueAt: new Date(due_at),
})
