// The part of the IndexedDB standard (W3C, Indexed Database API 3.0) that the message keys need, as types:
// Node has none, and the browser's whole type library is not wanted here.

export interface Request<T = unknown> {
  readonly result: T
  readonly error: Error | null
  readonly transaction: Transaction | null
  addEventListener(type: 'success' | 'error' | 'upgradeneeded', listener: () => void): void
}

export interface Cursor {
  readonly source: ObjectStore | Index
  readonly primaryKey: unknown
  update(value: unknown): Request
  delete(): Request
}

interface Index {
  readonly objectStore: ObjectStore
}

export interface StoreOptions {
  readonly keyPath?: string | string[] | null
  readonly autoIncrement?: boolean
}

export interface IndexOptions {
  readonly unique?: boolean
  readonly multiEntry?: boolean
}

export interface ObjectStore {
  readonly name: string
  readonly transaction: Transaction
  put(value: unknown, key?: unknown): Request
  add(value: unknown, key?: unknown): Request
  delete(query: unknown): Request
  clear(): Request
  getAllKeys(query?: unknown): Request<unknown[]>
  createIndex(name: string, keyPath: string | string[], options?: IndexOptions): Index
  deleteIndex(name: string): void
}

export interface Transaction {
  readonly db: Database
  readonly mode: 'readonly' | 'readwrite' | 'versionchange'
  objectStore(name: string): ObjectStore
  addEventListener(type: 'complete', listener: () => void): void
}

export interface Database {
  readonly name: string
  readonly version: number
  transaction(...scope: unknown[]): Transaction
  createObjectStore(name: string, options?: StoreOptions): ObjectStore
  deleteObjectStore(name: string): void
  close(): void
}

export interface Factory {
  open(name: string, version?: number): Request<Database>
}
