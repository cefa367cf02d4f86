// The table of work that is due.

import { PostgresAdapter, type Selectable } from 'kysely'
import type { Database, Tables } from '../database.ts'
import type { Due, DueMemory, NewDue } from '../due.ts'

/** At once. */
const mostClaimed = 50

export function dueMemory(db: Database): DueMemory {
  const isPostgres = db.getExecutor().adapter instanceof PostgresAdapter
  return {
    async add(...works) {
      if (works.length === 0) return 0
      const adding = db.insertInto('due').values(works.map(toRow))
      const { numInsertedOrUpdatedRows } = await adding.onConflict(same => same.doNothing()).executeTakeFirstOrThrow()
      return Number(numInsertedOrUpdatedRows)
    },
    async find(id) {
      const row = await db
        .selectFrom('due')
        .selectAll()
        .where('id', '=', id)
        .$if(isPostgres && db.isTransaction, one => one.forUpdate())
        .executeTakeFirst()
      return row && { ...dueFromRow(row), isDone: row.done_at !== '' }
    },
    of: async (person, kind) => (await waitingOf(db, person).where('kind', '=', kind).execute()).map(dueFromRow),
    async waiting() {
      const rows = await db
        .selectFrom('due')
        .select(({ fn, eb }) => [
          'kind',
          fn.countAll().as('count'),
          fn
            .countAll()
            .filterWhere(eb('tries', '>', 1))
            .as('retried'),
          fn.min('due_at').as('first'),
        ])
        .where('done_at', '=', '')
        .groupBy('kind')
        .execute()
      return rows.map(({ kind, count, retried, first }) => ({
        kind,
        count: Number(count),
        retried: Number(retried),
        firstDueAt: new Date(first),
      }))
    },
    async claim(kind, now, lease_s, surfaces) {
      if (surfaces?.length === 0) return []
      const due = db
        .selectFrom('due')
        .select('id')
        .where('kind', '=', kind)
        .where('done_at', '=', '')
        .where('due_at', '<=', now.toISOString())
        .$if(surfaces !== undefined, all =>
          all.where(({ eb, or }) =>
            or((surfaces ?? []).flatMap(one => [eb('place', '=', one), eb('place', 'like', `${one}:%`)])),
          ),
        )
        .orderBy('due_at')
        .limit(mostClaimed)
        // Whoever comes at the same time takes the next ones; SQLite lets in one at a time anyway.
        .$if(isPostgres, all => all.forUpdate().skipLocked())
      const rows = await db
        .updateTable('due')
        .set(({ eb }) => ({ due_at: later(now, lease_s).toISOString(), tries: eb('tries', '+', 1) }))
        .where('id', 'in', due)
        .returningAll()
        .execute()
      return rows.map(dueFromRow)
    },
    async later({ id, dueAt: seen, tries }, dueAt, isDone) {
      const same = db.updateTable('due').where('id', '=', id).where('tries', '=', tries)
      const anew = { due_at: dueAt.toISOString(), tries: isDone ? 0 : tries }
      await same.where('due_at', '=', seen.toISOString()).set(anew).execute()
    },
    async put(work) {
      const row = toRow(work)
      const { tries: _, ...anew } = row
      await db
        .insertInto('due')
        .values(row)
        .onConflict(same => same.column('id').doUpdateSet(anew))
        .execute()
    },
    async done(id, now) {
      const gone = { body: '', person: '', place: '', done_at: now.toISOString() }
      await db.updateTable('due').set(gone).where('id', '=', id).execute()
    },
  }
}

const later = (now: Date, after_s: number): Date => new Date(now.getTime() + after_s * 1000)

const waitingOf = (db: Database, person: string) =>
  db.selectFrom('due').selectAll().where('person', '=', person).where('done_at', '=', '').orderBy('due_at')
type Row = Selectable<Tables['due']>

const toRow = ({ body, dueAt, latestAt, ...work }: NewDue): Row => ({
  ...work,
  body: JSON.stringify(body),
  due_at: dueAt.toISOString(),
  latest_at: latestAt?.toISOString() ?? '',
  done_at: '',
  tries: 0,
})

const dueFromRow = ({ body, due_at, latest_at, done_at: _, ...row }: Row): Due => ({
  ...row,
  body: body === '' ? undefined : JSON.parse(body),
  dueAt: new Date(due_at),
  latestAt: latest_at === '' ? undefined : new Date(latest_at),
})
