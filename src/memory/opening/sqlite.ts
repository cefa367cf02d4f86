// Node's own SQLite under Kysely.

import { SqliteAdapter, SqliteDialect, sql } from 'kysely'
import type { Database } from '../database.ts'
import { openSqlite } from './sqlite-file.ts'

/** All in the thread that asks: for a database that is opened, backed up or restored, and for one in memory. */
export const sqliteDialect = (file: string): SqliteDialect => new NodeSqliteDialect({ database: openSqlite(file) })

/** Throws where another program holds the file, it can only be read, or a page of it is damaged. */
export async function readyToWrite(db: Database): Promise<void> {
  await db.connection().execute(async one => {
    await sql`begin immediate`.execute(one)
    await sql`rollback`.execute(one)
    const [found] = (await sql<{ quick_check: string }>`pragma quick_check(1)`.execute(one)).rows
    if (found?.quick_check !== 'ok') throw Object.assign(new Error(found?.quick_check), { errcode: damaged })
    // Versions before the first only let go of what was deleted. The file is written anew once: later it may be large.
    const { rows } = await sql<{ user_version: number }>`pragma user_version`.execute(one)
    if (rows[0]?.user_version === 0) {
      await sql`vacuum`.execute(one)
      await sql`pragma user_version = 1`.execute(one)
    }
  })
}

/** SQLITE_CORRUPT */
const damaged = 11

class NodeSqliteDialect extends SqliteDialect {
  override createAdapter(): SqliteAdapter {
    return new TransactionalAdapter()
  }
}

/** SQLite can undo a change of the schema, whatever Kysely supposes: so migrations are all or nothing. */
export class TransactionalAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true
  }
}
