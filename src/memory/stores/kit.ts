// The kit: packs, chargers and sources by name, of a person or of a community.

import type { Selectable } from 'kysely'
import { type Danger, dangers } from '../../charging/situation/dangers.ts'
import { type Database, inTransaction, oneAtATime, type Tables } from '../database.ts'
import type { KitEntry, KitMemory } from '../kit.ts'
import type { Owner } from '../owner.ts'

export function kitMemory(db: Database): KitMemory {
  return {
    save: (entry, most) =>
      inTransaction(db, async transaction => {
        await oneAtATime(transaction, `kit of ${entry.owner.scope} ${entry.owner.id}`)
        const others = await countOf(entriesOf(transaction, entry.owner).where('name', '!=', entry.name))
        if (others >= most) return 'full'
        const row = toRow(entry)
        await transaction
          .insertInto('kit')
          .values(row)
          .onConflict(conflict => conflict.columns(['scope', 'owner', 'name']).doUpdateSet(row))
          .execute()
        return 'saved'
      }),

    count: owner => countOf(entriesOf(db, owner)),

    find: async (owners, names) => {
      if (names.length === 0) return []
      const found = await Promise.all(owners.map(owner => entriesOf(db, owner).where('name', 'in', names).execute()))
      return firstOfEachName(found.flat().map(entryFromRow))
    },

    startingWith: async (owners, prefix, kinds, most) => {
      const found = await Promise.all(
        owners.map(owner =>
          entriesOf(db, owner)
            .where('kind', 'in', kinds)
            .where('name', 'like', `${prefix.replace(/[%_\\]/g, '')}%`)
            .orderBy('name')
            .limit(most)
            .execute(),
        ),
      )
      return byName(firstOfEachName(found.flat().map(entryFromRow))).slice(0, most)
    },

    rename: (owner, from, to) =>
      inTransaction(db, async transaction => {
        const row = await entriesOf(transaction, owner).where('name', '=', from).executeTakeFirst()
        if (!row) return 'missing'
        const { numInsertedOrUpdatedRows: saved } = await transaction
          .insertInto('kit')
          .values({ ...row, name: to })
          .onConflict(conflict => conflict.doNothing())
          .executeTakeFirstOrThrow()
        if (!saved) return 'taken'
        await deletion(transaction, owner).where('name', '=', from).execute()
        // Charges of an earlier pack of the new name would mix with those of this one.
        await logOf(transaction, owner, to).execute()
        await transaction
          .updateTable('log')
          .set({ name: to })
          .where(({ and }) => and({ scope: owner.scope, owner: owner.id, name: from }))
          .execute()
        return 'renamed'
      }),

    remove: (owner, name) =>
      inTransaction(db, async transaction => {
        const { numDeletedRows } = await deletion(transaction, owner).where('name', '=', name).executeTakeFirst()
        await logOf(transaction, owner, name).execute()
        return numDeletedRows > 0n
      }),
  }
}

export const entriesOf = (db: Database, { scope, id }: Owner) =>
  db.selectFrom('kit').selectAll().where('scope', '=', scope).where('owner', '=', id)
const deletion = (db: Database, { scope, id }: Owner) =>
  db.deleteFrom('kit').where('scope', '=', scope).where('owner', '=', id)

/** To delete the charges noted of a pack. */
const logOf = (db: Database, { scope, id }: Owner, name: string) =>
  db.deleteFrom('log').where('scope', '=', scope).where('owner', '=', id).where('name', '=', name)

async function countOf(entries: ReturnType<typeof entriesOf>): Promise<number> {
  const { count } = await entries
    .clearSelect()
    .select(({ fn }) => fn.countAll().as('count'))
    .executeTakeFirstOrThrow()
  return Number(count)
}

function firstOfEachName(entries: readonly KitEntry[]): readonly KitEntry[] {
  return [...new Map(entries.toReversed().map(entry => [entry.name, entry])).values()].reverse()
}

function byName(entries: readonly KitEntry[]): readonly KitEntry[] {
  return entries.toSorted((a, b) => a.name.localeCompare(b.name, 'en'))
}

type Row = Selectable<Tables['kit']>

const toRow = ({ owner, name, kind, notation, note }: KitEntry): Row => ({
  scope: owner.scope,
  owner: owner.id,
  name,
  kind,
  notation,
  note: note ?? '',
})

export const entryFromRow = ({ scope, owner, name, kind, notation, note }: Row): KitEntry => ({
  owner: { scope, id: owner },
  name,
  kind,
  notation,
  note: Object.hasOwn(dangers, note) ? (note as Danger) : undefined,
})
