// The SQLite file in which IndexedDB databases outlive the process: their shape and their records.

import { DatabaseSync } from 'node:sqlite'
import { deserialize, serialize } from 'node:v8'
import type { IndexOptions, StoreOptions } from './indexeddb-types.ts'

const shape = `
  PRAGMA journal_mode = WAL;
  PRAGMA synchronous = FULL;
  CREATE TABLE IF NOT EXISTS database (name TEXT PRIMARY KEY, version INTEGER NOT NULL) STRICT;
  CREATE TABLE IF NOT EXISTS store (
    database TEXT, name TEXT, options TEXT NOT NULL, PRIMARY KEY (database, name)) STRICT;
  CREATE TABLE IF NOT EXISTS store_index (
    database TEXT, store TEXT, name TEXT, key_path TEXT NOT NULL, options TEXT NOT NULL,
    PRIMARY KEY (database, store, name)) STRICT;
  CREATE TABLE IF NOT EXISTS record (
    database TEXT, store TEXT, key TEXT, value BLOB NOT NULL, PRIMARY KEY (database, store, key)) STRICT;
`

export interface KeptIndex {
  readonly name: string
  readonly keyPath: string | string[]
  readonly options: IndexOptions
}

export interface KeptStore {
  readonly name: string
  readonly options: StoreOptions
  readonly indexes: readonly KeptIndex[]
  readonly records: readonly { readonly key: unknown; readonly value: unknown }[]
}

export interface KeptDatabase {
  readonly name: string
  readonly version: number
  readonly stores: readonly KeptStore[]
}

/** One change to the file; the changes of a transaction are written together. */
export type Change = (file: KeyFile) => void

export class KeyFile {
  readonly #db: DatabaseSync
  readonly #putRecord
  readonly #deleteRecord

  /** Opens the file, or makes it. Throws where it cannot be read or written. */
  constructor(path: string) {
    this.#db = new DatabaseSync(path)
    this.#db.exec(shape)
    this.#putRecord = this.#db.prepare('INSERT OR REPLACE INTO record VALUES (?, ?, ?, ?)')
    this.#deleteRecord = this.#db.prepare('DELETE FROM record WHERE database = ? AND store = ? AND key = ?')
  }

  write(changes: readonly Change[]): void {
    this.#db.exec('BEGIN IMMEDIATE')
    try {
      for (const change of changes) change(this)
      this.#db.exec('COMMIT')
    } catch (error) {
      this.#db.exec('ROLLBACK')
      throw error
    }
  }

  putRecord(database: string, store: string, key: unknown, value: Uint8Array): void {
    this.#putRecord.run(database, store, keyText(key), value)
  }

  deleteRecord(database: string, store: string, key: unknown): void {
    this.#deleteRecord.run(database, store, keyText(key))
  }

  putVersion(database: string, version: number): void {
    this.#db.prepare('INSERT OR REPLACE INTO database VALUES (?, ?)').run(database, version)
  }

  putStore(database: string, store: string, options: StoreOptions): void {
    this.#db.prepare('INSERT INTO store VALUES (?, ?, ?)').run(database, store, JSON.stringify(options))
  }

  deleteStore(database: string, store: string): void {
    for (const [table, column] of [
      ['record', 'store'],
      ['store_index', 'store'],
      ['store', 'name'],
    ]) {
      this.#db.prepare(`DELETE FROM ${table} WHERE database = ? AND ${column} = ?`).run(database, store)
    }
  }

  putIndex(database: string, store: string, { name, keyPath, options }: KeptIndex): void {
    this.#db
      .prepare('INSERT INTO store_index VALUES (?, ?, ?, ?, ?)')
      .run(database, store, name, JSON.stringify(keyPath), JSON.stringify(options))
  }

  deleteIndex(database: string, store: string, name: string): void {
    this.#db.prepare('DELETE FROM store_index WHERE database = ? AND store = ? AND name = ?').run(database, store, name)
  }

  databases(): KeptDatabase[] {
    return this.#rows('SELECT name, version FROM database').map(({ name, version }) => ({
      name: String(name),
      version: Number(version),
      stores: this.#stores(String(name)),
    }))
  }

  close(): void {
    this.#db.close()
  }

  #stores(database: string): KeptStore[] {
    return this.#rows('SELECT name, options FROM store WHERE database = ?', database).map(store => {
      const name = String(store.name)
      const indexes = this.#rows('SELECT * FROM store_index WHERE database = ? AND store = ?', database, name)
      const records = this.#rows('SELECT key, value FROM record WHERE database = ? AND store = ?', database, name)
      return {
        name,
        options: JSON.parse(String(store.options)),
        indexes: indexes.map(index => ({
          name: String(index.name),
          keyPath: JSON.parse(String(index.key_path)),
          options: JSON.parse(String(index.options)),
        })),
        records: records.map(({ key, value }) => ({
          key: JSON.parse(String(key)),
          value: deserialize(value as Uint8Array),
        })),
      }
    })
  }

  #rows(sql: string, ...values: string[]) {
    return this.#db.prepare(sql).all(...values)
  }
}

/** The bytes of a value as the structured clone algorithm copies it. */
export const valueBytes = (value: unknown): Uint8Array => serialize(value)

/** Throws where the key is of a kind that JSON would change. */
function keyText(key: unknown): string {
  const keepable = (part: unknown): boolean =>
    typeof part === 'string' || Number.isFinite(part) || (Array.isArray(part) && part.every(keepable))
  if (!keepable(key)) throw new TypeError('a key of the message store must be text, a number or a list of these')
  return JSON.stringify(key)
}
