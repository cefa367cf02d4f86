// Migrations: forward, all or nothing, and never onto a newer database.

import type { Migration } from 'kysely/migration'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Database } from '../../../src/memory/database.ts'
import { MemoryError } from '../../../src/memory/memory-error.ts'
import { migrate } from '../../../src/memory/opening/migrate.ts'
import { migrations } from '../../../src/memory/opening/migrations.ts'
import { memoryIn, openMemory } from '../../../src/memory/opening/open.ts'
import { connectTestDatabase, testDatabaseUrl } from '../../support/test-memory.ts'

let db: Database
beforeEach(async () => {
  db = await connectTestDatabase()
})
afterEach(() => db.destroy())

const tableNames = async () => (await db.introspection.getTables()).map(table => table.name).sort()

const feathers: Migration = {
  up: async database => {
    await database.schema.createTable('feathers').addColumn('id', 'text').execute()
  },
}
const broken: Migration = {
  up: async database => {
    await database.schema.createTable('half').addColumn('id', 'text').execute()
    throw new Error('no room left')
  },
}

test('keeps what is there when the schema moves on', async () => {
  await migrate(db, migrations)
  const memory = memoryIn(db)
  const id = await memory.questions.keep('help')
  await migrate(db, { ...migrations, '999-feathers': feathers })
  expect(await memory.questions.find(id)).toBe('help')
  expect(await tableNames()).toContain('feathers')
})

test('a second time changes nothing', async () => {
  await migrate(db, migrations)
  const before = await tableNames()
  await migrate(db, migrations)
  expect(await tableNames()).toEqual(before)
})

test('a migration that fails leaves no half of it, nor of those before it', async () => {
  await expect(migrate(db, { '001-feathers': feathers, '002-broken': broken })).rejects.toThrow('no room left')
  expect(await tableNames()).toEqual([])
})

test('a newer database is refused in a plain sentence and left as it is', async () => {
  await migrate(db, { ...migrations, '999-feathers': feathers })
  const before = await tableNames()
  const refused = migrate(db, migrations)
  await expect(refused).rejects.toThrow(MemoryError)
  await expect(refused).rejects.toThrow(
    'The memory was written by a newer version of this program (it has 999-feathers).',
  )
  expect(await tableNames()).toEqual(before)
})

test('two that start at once on one empty database both come up', async context => {
  const databaseUrl = await testDatabaseUrl()
  if (!databaseUrl) return context.skip('SQLite has one process')
  const place = { dataFolder: ':memory:', databaseUrl }
  const [one, other] = await Promise.all([openMemory(place), openMemory(place)])
  const id = await one.questions.keep('help')
  expect(await other.questions.find(id)).toBe('help')
  await Promise.all([one.close(), other.close()])
})
