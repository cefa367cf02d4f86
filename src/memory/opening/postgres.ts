// PostgreSQL under Kysely, for several replicas of the assistant on one memory.

import { PostgresDialect, type PostgresPool } from 'kysely'

/** The driver is loaded at the first query: on SQLite nobody waits for it. */
export function postgresDialect(url: string): PostgresDialect {
  return new PostgresDialect({ pool: () => openPool(url) })
}

async function openPool(url: string): Promise<PostgresPool> {
  const { Pool } = await import('pg')
  const pool = new Pool({ connectionString: url, max: 10, connectionTimeoutMillis: 5000 })
  // An idle connection that breaks is dropped by the pool; the next query says so where it still fails.
  pool.on('error', () => {})
  return pool
}
