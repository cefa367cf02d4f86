// What nobody needs any longer is dropped, a slice at a time, so that nobody waits behind it.

import { setImmediate as nextTurn } from 'node:timers/promises'
import { sql } from 'kysely'
import type { Database } from './database.ts'

/** So long a change can be taken back by whoever made it; of a person's own kit none is noted for longer. */
export const undoable_ms = 10 * 60_000

const day_ms = 86_400_000
const slice = 500

/** Rows go by the time in a column, as text; where that is empty too, unless they are `dated`. */
const kept = [
  /** Long after the last edit of a question or reply to an answer, and after any late delivery. */
  { table: 'answered', key: 'question_message', at: 'answered_at', days: 90 },
  /** The buttons under an older answer say that they are too old. A day is noted, no time. */
  { table: 'questions', key: 'id', at: 'kept_on', days: 365, digits: 10 },
  { table: 'changes', key: 'id', at: 'at', days: 365 },
  { table: 'noticed', key: 'id', at: 'at', days: 15 },
  /** Longer than any platform tells the same again. */
  { table: 'due', key: 'id', at: 'done_at', days: 30, dated: true },
  /** What no surface that could do it was there for. */
  { table: 'due', key: 'id', at: 'latest_at', days: 30, dated: true },
]

export async function forgetOld(db: Database, now: Date): Promise<void> {
  for (const { table, key, at, days, digits, dated } of kept) {
    const before = new Date(now.getTime() - days * day_ms).toISOString().slice(0, digits)
    const [rows, id, time] = [sql.table(table), sql.ref(key), sql.ref(at)]
    const old = sql`select ${id} from ${rows} where ${time} < ${before} and ${time} >= ${dated ? '0' : ''} limit ${slice}`
    for (let gone = slice; gone === slice; await nextTurn()) {
      const { numAffectedRows } = await sql`delete from ${rows} where ${id} in (${old})`.execute(db)
      gone = Number(numAffectedRows)
    }
  }
}
