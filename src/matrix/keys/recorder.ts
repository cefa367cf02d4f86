// Teaches the in-memory IndexedDB to hand on what each transaction changed, the moment it completes.

import { IDBCursor, IDBDatabase, IDBObjectStore } from 'fake-indexeddb'
import type { Cursor, Database, ObjectStore, Request, Transaction } from './indexeddb-types.ts'
import { type Change, valueBytes } from './key-file.ts'

export type Write = (changes: readonly Change[]) => void
const changesOf = new WeakMap<Transaction, Change[]>()
const upgradeOf = new WeakMap<Database, Change[]>()
const writerOf = new WeakMap<Database, Write>()

/** From now on every read-write transaction of `database` hands its changes to `write`. */
export function recordChanges(database: Database, write: Write): void {
  writerOf.set(database, write)
}

/** The same for the transaction that makes or changes the shape of a database; call it in `upgradeneeded`. */
export function recordUpgrade({ result: database, transaction }: Request<Database>, write: Write): void {
  if (!transaction) return
  const { name, version } = database
  const changes = recordTransaction(transaction, write)
  changes.push(file => file.putVersion(name, version))
  upgradeOf.set(database, changes)
}

function recordTransaction(transaction: Transaction, write: Write): Change[] {
  const changes: Change[] = []
  changesOf.set(transaction, changes)
  transaction.addEventListener('complete', () => {
    if (changes.length > 0) write(changes)
  })
  return changes
}

type Method = (...args: unknown[]) => unknown

/** Puts `around` in place of a method; it gets the object and the method as it was. */
function wrap<T extends object, K extends keyof T>(
  type: { prototype: T },
  method: K,
  around: (self: T, inner: T[K]) => T[K],
): void {
  const inner = type.prototype[method] as unknown as Method
  const outer = function (this: T, ...args: unknown[]) {
    return (around(this, inner.bind(this) as unknown as T[K]) as unknown as Method)(...args)
  }
  type.prototype[method] = outer as unknown as T[K]
}

function noteChange(store: ObjectStore, change: (database: string) => Change): void {
  changesOf.get(store.transaction)?.push(change(store.transaction.db.name))
}

function notePut(store: ObjectStore, value: unknown, request: Request): Request {
  const bytes = valueBytes(value)
  const { name } = store
  request.addEventListener('success', () =>
    noteChange(store, database => file => file.putRecord(database, name, request.result, bytes)),
  )
  return request
}

function noteDelete(store: ObjectStore, query?: unknown): void {
  const keys = store.getAllKeys(query)
  const { name } = store
  keys.addEventListener('success', () => {
    for (const key of keys.result) noteChange(store, database => file => file.deleteRecord(database, name, key))
  })
}

const storeOf = ({ source }: Cursor): ObjectStore => ('objectStore' in source ? source.objectStore : source)

wrap<Database, 'transaction'>(IDBDatabase, 'transaction', (database, begin) => (...scope) => {
  const transaction = begin(...scope)
  const write = writerOf.get(database)
  if (write && transaction.mode === 'readwrite') recordTransaction(transaction, write)
  return transaction
})

wrap<Database, 'createObjectStore'>(IDBDatabase, 'createObjectStore', (_, create) => (name, options = {}) => {
  if (options.autoIncrement) throw new TypeError('the message store keeps no key generators')
  const store = create(name, options)
  noteChange(store, database => file => file.putStore(database, name, options))
  return store
})

wrap<Database, 'deleteObjectStore'>(IDBDatabase, 'deleteObjectStore', (database, remove) => name => {
  upgradeOf.get(database)?.push(file => file.deleteStore(database.name, name))
  return remove(name)
})

for (const method of ['put', 'add'] as const) {
  wrap<ObjectStore, typeof method>(
    IDBObjectStore,
    method,
    (store, put) =>
      (...entry) =>
        notePut(store, entry[0], put(...entry)),
  )
}

wrap<ObjectStore, 'delete'>(IDBObjectStore, 'delete', (store, remove) => query => {
  noteDelete(store, query)
  return remove(query)
})

wrap<ObjectStore, 'clear'>(IDBObjectStore, 'clear', (store, clear) => () => {
  noteDelete(store)
  return clear()
})

wrap<ObjectStore, 'createIndex'>(IDBObjectStore, 'createIndex', (store, create) => (name, keyPath, options = {}) => {
  noteChange(store, database => file => file.putIndex(database, store.name, { name, keyPath, options }))
  return create(name, keyPath, options)
})

wrap<ObjectStore, 'deleteIndex'>(IDBObjectStore, 'deleteIndex', (store, remove) => name => {
  noteChange(store, database => file => file.deleteIndex(database, store.name, name))
  return remove(name)
})

wrap<Cursor, 'update'>(IDBCursor, 'update', (cursor, update) => value => notePut(storeOf(cursor), value, update(value)))

wrap<Cursor, 'delete'>(IDBCursor, 'delete', (cursor, remove) => () => {
  noteDelete(storeOf(cursor), cursor.primaryKey)
  return remove()
})
