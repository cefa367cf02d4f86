// An empty memory for a test: SQLite in memory, or a schema of its own where TEST_DATABASE_URL names a PostgreSQL.

import { randomUUID } from 'node:crypto'
import { Client } from 'pg'
import type { Memory } from '../../src/memory/memory.ts'
import { openMemory } from '../../src/memory/open.ts'

export async function openTestMemory(): Promise<Memory> {
  const url = process.env.TEST_DATABASE_URL
  if (!url) return openMemory({ dataFolder: ':memory:' })
  return openMemory({ dataFolder: ':memory:', databaseUrl: await emptySchema(url) })
}

/** A URL of the same database in which only a new, empty schema is seen. */
export async function emptySchema(url: string): Promise<string> {
  const name = `test_${randomUUID().replaceAll('-', '')}`
  const client = new Client({ connectionString: url })
  await client.connect()
  await client.query(`create schema ${name}`)
  await client.end()
  const own = new URL(url)
  own.searchParams.set('options', `-c search_path=${name}`)
  return own.href
}
