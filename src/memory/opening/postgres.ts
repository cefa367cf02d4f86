// PostgreSQL under Kysely, for several replicas of the assistant on one memory.

import { PostgresDialect, type PostgresPool } from 'kysely'
import type { PoolConfig } from 'pg'

/** How long a statement may take, and a transaction that has stopped asking; for ever where absent. */
export type Patience = Pick<PoolConfig, 'statement_timeout' | 'query_timeout' | 'idle_in_transaction_session_timeout'>

/** For people who wait: the server gives up first, so that what was given up was not done. */
export const impatient: Patience = {
  statement_timeout: 3000,
  query_timeout: 4000,
  idle_in_transaction_session_timeout: 10_000,
}

/** The driver is loaded at the first query: on SQLite nobody waits for it. */
export function postgresDialect(url: string, patience: Patience = {}): PostgresDialect {
  return new PostgresDialect({ pool: () => openPool(url, patience) })
}

async function openPool(url: string, patience: Patience): Promise<PostgresPool> {
  const { Pool } = await import('pg')
  const connections = { max: 10, connectionTimeoutMillis: 3000, keepAlive: true }
  const pool = new Pool({ connectionString: url, ...connections, ...patience })
  // A connection that breaks, idle or lent out, is dropped by the pool; the next query says so where it still fails.
  pool.on('error', () => {})
  pool.on('connect', client => client.on('error', () => {}))
  return pool
}
