// The charges noted of packs.

import type { Selectable } from 'kysely'
import type { LogMemory, NotedCharge } from '../charge-log.ts'
import { type Database, inTransaction, type Tables } from '../database.ts'
import type { Owner } from '../owner.ts'

export function logMemory(db: Database): LogMemory {
  return {
    add: (charge, most) =>
      inTransaction(db, async transaction => {
        await transaction.insertInto('log').values(toRow(charge)).execute()
        const surplus = await chargesOf(transaction, charge.owner)
          .where('name', '=', charge.name)
          .clearSelect()
          .select('id')
          .orderBy('at', 'desc')
          .orderBy('id')
          .offset(most)
          // SQLite takes no offset without a limit.
          .limit(Number.MAX_SAFE_INTEGER)
          .execute()
        const ids = surplus.map(({ id }) => id)
        if (ids.length > 0) await transaction.deleteFrom('log').where('id', 'in', ids).execute()
      }),
    async of(owner, name) {
      const rows = await chargesOf(db, owner).where('name', '=', name).orderBy('at').orderBy('id').execute()
      return rows.map(chargeFromRow)
    },
    async removeLast(owner, name) {
      const last = chargesOf(db, owner)
        .where('name', '=', name)
        .clearSelect()
        .select('id')
        .orderBy('at', 'desc')
        .orderBy('id', 'desc')
        .limit(1)
      const row = await db.deleteFrom('log').where('id', '=', last).returningAll().executeTakeFirst()
      return row && chargeFromRow(row)
    },
  }
}

export const chargesOf = (db: Database, { scope, id }: Owner) =>
  db.selectFrom('log').selectAll().where('scope', '=', scope).where('owner', '=', id)
type Row = Selectable<Tables['log']>

const toRow = ({ id, owner, name, notation, at, ...note }: NotedCharge): Row => ({
  id,
  scope: owner.scope,
  owner: owner.id,
  name,
  notation,
  at: at.toISOString(),
  note: JSON.stringify(note),
})

export const chargeFromRow = ({ id, scope, owner, name, notation, at, note }: Row): NotedCharge => ({
  id,
  owner: { scope, id: owner },
  name,
  notation,
  at: new Date(at),
  ...(JSON.parse(note) as Omit<NotedCharge, 'id' | 'owner' | 'name' | 'notation' | 'at'>),
})
