// PostgreSQL under Kysely, for several replicas of the assistant on one memory.

import { PostgresDialect } from 'kysely'
import { Pool } from 'pg'

export function postgresDialect(url: string): PostgresDialect {
  const pool = new Pool({ connectionString: url, max: 10, connectionTimeoutMillis: 5000 })
  // An idle connection that breaks is dropped by the pool; the next query says so where it still fails.
  pool.on('error', () => {})
  return new PostgresDialect({ pool })
}
