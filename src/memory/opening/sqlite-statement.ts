// One statement on a SQLite file, as Kysely wants its result.

import type { QueryResult, SqliteDatabase } from 'kysely'

/** What the thread that writes says of a statement. */
export interface Written {
  readonly result?: QueryResult<unknown>
  readonly error?: { readonly message: string; readonly code: string | undefined; readonly errcode: number | undefined }
}

export function answered(database: SqliteDatabase, sql: string, parameters: readonly unknown[]): QueryResult<unknown> {
  const statement = database.prepare(sql)
  if (statement.reader) return { rows: statement.all(parameters) }
  const { changes } = statement.run(parameters)
  return { numAffectedRows: BigInt(changes), rows: [] }
}
