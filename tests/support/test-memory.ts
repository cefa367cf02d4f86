// An empty memory for a test: SQLite in memory, or a database of its own where TEST_DATABASE_URL names a PostgreSQL.

import { randomUUID } from 'node:crypto'
import { Client } from 'pg'
import type { Database } from '../../src/memory/database.ts'
import type { Memory } from '../../src/memory/memory.ts'
import { connect } from '../../src/memory/opening/connect.ts'
import { openMemory } from '../../src/memory/opening/open.ts'

const serverUrl = process.env.TEST_DATABASE_URL

export async function openTestMemory(): Promise<Memory> {
  return openMemory({ dataFolder: ':memory:', databaseUrl: await testDatabaseUrl() })
}

/** A database without a schema, for tests that look at the tables themselves. */
export async function connectTestDatabase(): Promise<Database> {
  return connect({ dataFolder: ':memory:', databaseUrl: await testDatabaseUrl() })
}

/** The URL of a new, empty database; undefined where the tests run on SQLite. */
export async function testDatabaseUrl(): Promise<string | undefined> {
  if (!serverUrl) return undefined
  const name = `test_${randomUUID().replaceAll('-', '')}`
  const client = new Client({ connectionString: serverUrl })
  await client.connect()
  await client.query(`create database ${name}`)
  await client.end()
  const own = new URL(serverUrl)
  own.pathname = `/${name}`
  return own.href
}
