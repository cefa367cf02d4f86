// The lasting IndexedDB: what a finished transaction changed is there again for the next process.

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Cursor, Database, ObjectStore, Request } from '../../../src/matrix/keys/indexeddb-types.ts'
import { openLastingIndexedDB } from '../../../src/matrix/keys/lasting-indexeddb.ts'
import { anyCharacter } from '../../support/any-character.ts'
import { cases } from '../../support/cases.ts'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'keys-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const open = (onLost: (error: unknown) => void = () => {}) => openLastingIndexedDB(join(folder, 'keys.sqlite'), onLost)

const settled = <T>(request: Request<T>) =>
  new Promise<T>((resolve, reject) => {
    request.addEventListener('success', () => resolve(request.result))
    request.addEventListener('error', () => reject(request.error))
  })

async function openDatabase(
  { factory }: Awaited<ReturnType<typeof open>>,
  version = 1,
  upgrade = (database: Database, _: Request<Database>) => {
    database.createObjectStore('sessions').createIndex('by room', 'room')
    database.createObjectStore('people', { keyPath: 'name' })
  },
) {
  const request = factory.open('crypto', version)
  request.addEventListener('upgradeneeded', () => upgrade(request.result, request))
  return await settled(request)
}

function change(database: Database, work: (sessions: ObjectStore, people: ObjectStore) => void): Promise<void> {
  const transaction = database.transaction(['sessions', 'people'], 'readwrite')
  work(transaction.objectStore('sessions'), transaction.objectStore('people'))
  return new Promise(resolve => transaction.addEventListener('complete', resolve))
}

type Readable = ObjectStore & {
  getAll(): Request<unknown[]>
  index(name: string): { getAll(key: unknown): Request<unknown[]> }
  openCursor(): Request<(Cursor & { continue(): void }) | null>
}

async function contents(database: Database, store: 'sessions' | 'people') {
  const found = database.transaction([store], 'readonly').objectStore(store) as Readable
  const [keys, values] = await Promise.all([settled(found.getAllKeys()), settled(found.getAll())])
  return keys.map((key, i) => [key, values[i]])
}

async function reopened(first: Awaited<ReturnType<typeof open>>, store: 'sessions' | 'people') {
  first.close()
  const second = await open()
  const database = await openDatabase(second)
  const found = await contents(database, store)
  second.close()
  return found
}

test('records, with keys of text, numbers and lists, and bytes as values', async () => {
  const first = await open()
  const database = await openDatabase(first)
  await change(database, sessions => {
    sessions.put({ room: '!a', data: new Uint8Array([0, 1, 255]) }, ['!a', 1])
    sessions.put('plain', 'key')
    sessions.put({ room: '!b' }, 7)
  })
  expect(await reopened(first, 'sessions')).toEqual([
    [7, { room: '!b' }],
    ['key', 'plain'],
    [['!a', 1], { room: '!a', data: new Uint8Array([0, 1, 255]) }],
  ])
})

test('a store whose keys are inside the values', async () => {
  const first = await open()
  const database = await openDatabase(first)
  await change(database, (_, people) => people.put({ name: 'ada', age: 1 }))
  await change(database, (_, people) => people.put({ name: 'ada', age: 2 }))
  expect(await reopened(first, 'people')).toEqual([['ada', { name: 'ada', age: 2 }]])
})

test('deletes of one key, and of everything', async () => {
  const first = await open()
  const database = await openDatabase(first)
  await change(database, (sessions, people) => {
    for (const key of ['a', 'b', 'c']) sessions.put(key, key)
    people.put({ name: 'ada' })
  })
  await change(database, (sessions, people) => {
    sessions.delete('b')
    people.clear()
  })
  expect(await reopened(first, 'sessions')).toEqual([
    ['a', 'a'],
    ['c', 'c'],
  ])
})

test('changes through a cursor', async () => {
  const first = await open()
  const database = await openDatabase(first)
  await change(database, sessions => {
    for (const key of ['a', 'b', 'c']) sessions.put(key, key)
  })
  await change(database, sessions => {
    const request = (sessions as Readable).openCursor()
    request.addEventListener('success', () => {
      const cursor = request.result
      if (cursor?.primaryKey === 'a') cursor.update('changed')
      if (cursor?.primaryKey === 'b') cursor.delete()
      cursor?.continue()
    })
  })
  expect(await reopened(first, 'sessions')).toEqual([
    ['a', 'changed'],
    ['c', 'c'],
  ])
})

test('an aborted transaction leaves no trace', async () => {
  const first = await open()
  const database = await openDatabase(first)
  const transaction = database.transaction(['sessions'], 'readwrite') as ReturnType<Database['transaction']> & {
    abort(): void
  }
  transaction.objectStore('sessions').put('never', 'key')
  transaction.abort()
  await change(database, sessions => sessions.put('kept', 'other'))
  expect(await reopened(first, 'sessions')).toEqual([['other', 'kept']])
})

test('a change of shape: stores and indexes made and removed, records moved', async () => {
  const first = await open()
  const old = await openDatabase(first)
  await change(old, (sessions, people) => {
    sessions.put({ room: '!a' }, 'x')
    people.put({ name: 'ada' })
  })
  old.close()
  const upgraded = await openDatabase(first, 2, (database, request) => {
    database.deleteObjectStore('people')
    const sessions = request.transaction?.objectStore('sessions')
    sessions?.deleteIndex('by room')
    sessions?.createIndex('by place', 'place')
    sessions?.put({ place: '!a' }, 'x')
    database.createObjectStore('rooms').put('a room', '!a')
  })
  expect(upgraded.version).toBe(2)
  first.close()

  const second = await open()
  const request = second.factory.open('crypto')
  const database = await settled(request)
  expect(database.version).toBe(2)
  const sessions = database.transaction(['sessions'], 'readonly').objectStore('sessions') as Readable
  expect(await settled(sessions.index('by place').getAll('!a'))).toEqual([{ place: '!a' }])
  expect(() => sessions.index('by room')).toThrow()
  expect(() => database.transaction(['people'], 'readonly')).toThrow()
  second.close()
})

test('a transaction that cannot be written is told, once it is complete', async () => {
  const lost: unknown[] = []
  const first = await open(error => lost.push(error))
  const database = await openDatabase(first)
  first.close()
  await change(database, sessions => sessions.put('value', 'key'))
  expect(lost).toHaveLength(1)
})

test('any order of puts and deletes gives the same contents after as before', async () => {
  const key = fc.oneof(fc.string({ unit: anyCharacter }), fc.integer(), fc.tuple(fc.string(), fc.integer()))
  const step = fc.record({ key, value: fc.option(fc.string()) })
  let round = 0
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 30 }), async steps => {
      const path = join(folder, `${round++}.sqlite`)
      const first = await openLastingIndexedDB(path, () => {})
      const database = await openDatabase(first)
      for (const { key, value } of steps) {
        await change(database, sessions => void (value === null ? sessions.delete(key) : sessions.put(value, key)))
      }
      const before = await contents(database, 'sessions')
      first.close()
      const second = await openLastingIndexedDB(path, () => {})
      expect(await contents(await openDatabase(second), 'sessions')).toEqual(before)
      second.close()
    }),
    cases(40),
  )
})
