// Changes as they were made, with who made them.

import { randomUUID } from 'node:crypto'
import type { Selectable } from 'kysely'
import { type Database, inTransaction, type Tables } from '../database.ts'
import type { Change, HistoryMemory, Memory, NotedChange } from '../memory.ts'
import { undoable_ms } from '../retention.ts'

/** `memoryIn` gives the memory in a transaction. */
export function historyMemory(db: Database, memoryIn: (transaction: Database) => Memory): HistoryMemory {
  return {
    noting: (by, work, undoes) =>
      inTransaction(db, async transaction => {
        const { result, change } = await work(memoryIn(transaction))
        if (undoes) await transaction.updateTable('changes').set({ undone: 1 }).where('id', '=', undoes.id).execute()
        if (!change) return result
        const noted = { ...by, change, scope: scopeOf(change), undone: false, undoes: undoes?.id ?? '' }
        await transaction
          .insertInto('changes')
          .values(toRow({ id: risingId(), ...noted }))
          .execute()
        const earliest = new Date(by.at.getTime() - undoable_ms)
        await transaction
          .deleteFrom('changes')
          .where('at', '<', earliest.toISOString())
          .where('scope', '=', 'person')
          .execute()
        return result
      }),
    async latest(community, most) {
      return (await sharedBy(db, community).limit(most).execute()).map(changeFromRow)
    },
    async ofAnswer(community, answer) {
      const isOfIt = `%"id":${JSON.stringify(answer)}%`
      const row = await sharedBy(db, community).where('change', 'like', isOfIt).limit(1).executeTakeFirst()
      return row && changeFromRow(row)
    },
    async changesOf(person, community) {
      const rows = await changesBy(db, person)
        .where(({ and }) => and({ undone: 0, undoes: '' }))
        .where(({ eb, or }) => or([eb('community', '=', community), eb('scope', '=', 'person')]))
        .orderBy('at', 'desc')
        .orderBy('id', 'desc')
        .limit(lastFew)
        .execute()
      return rows.map(changeFromRow)
    },
  }
}

/** More than anybody changes within the time to take it back. */
const lastFew = 50

let noted = 0
/** Of changes in one millisecond the later one has the greater id. */
function risingId(): string {
  noted += 1
  return `${String(noted).padStart(12, '0')}-${randomUUID()}`
}

const scopeOf = (change: Change): NotedChange['scope'] =>
  change.of === 'kit' ? ((change.before ?? change.after)?.owner.scope ?? 'community') : 'community'

/** The latest first. */
const sharedBy = (db: Database, community: string) =>
  db
    .selectFrom('changes')
    .selectAll()
    .where(({ and }) => and({ community, scope: 'community' }))
    .orderBy('at', 'desc')
    .orderBy('id', 'desc')

export const changesBy = (db: Database, person: string) =>
  db.selectFrom('changes').selectAll().where('person', '=', person)

type Row = Selectable<Tables['changes']>

const toRow = ({ change, at, undone, ...rest }: NotedChange): Row => ({
  ...rest,
  at: at.toISOString(),
  change: JSON.stringify(change),
  undone: undone ? 1 : 0,
})

export const changeFromRow = ({ change, at, undone, ...rest }: Row): NotedChange => ({
  ...rest,
  at: new Date(at),
  change: JSON.parse(change, withDates) as Change,
  undone: undone === 1,
})

/** Charges in it have the day on which they were noted. */
const withDates = (key: string, value: unknown): unknown => (key === 'at' ? new Date(value as string) : value)
