// An IndexedDB for Node that outlives the process: read from memory, and every finished transaction written to a
// file before its asker hears that it is complete. A kill at any moment loses nothing that was acknowledged.

import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { ownersFile } from '../../memory/opening/owner-only.ts'
import type { Database, Factory, Request } from './indexeddb-types.ts'
import { type KeptDatabase, KeyFile } from './key-file.ts'
import { recordChanges, recordUpgrade, type Write } from './recorder.ts'

const MemoryFactory = IDBFactory as unknown as new () => Factory

/**
 * Opens the file at `path`, or makes it, and gives an IndexedDB with what it holds. `onLost` is told when a finished
 * transaction could not be written (a full disk): then memory is ahead of the file, and the process should end.
 */
export async function openLastingIndexedDB(path: string, onLost: (error: unknown) => void) {
  ownersFile(path)
  const file = new KeyFile(path)
  const memory = new MemoryFactory()
  for (const kept of file.databases()) await restore(memory, kept)

  const write: Write = changes => {
    try {
      file.write(changes)
    } catch (error) {
      onLost(error)
    }
  }
  const factory: Factory = {
    open(name, version) {
      const request = memory.open(name, version)
      request.addEventListener('upgradeneeded', () => recordUpgrade(request, write))
      request.addEventListener('success', () => recordChanges(request.result, write))
      return request
    },
  }
  return { factory, close: () => file.close() }
}

async function restore(memory: Factory, { name, version, stores }: KeptDatabase): Promise<void> {
  const request = memory.open(name, version)
  request.addEventListener('upgradeneeded', () => {
    for (const { name, options, indexes, records } of stores) {
      const store = request.result.createObjectStore(name, options)
      for (const index of indexes) store.createIndex(index.name, index.keyPath, index.options)
      for (const { key, value } of records) options.keyPath ? store.put(value) : store.put(value, key)
    }
  })
  const database: Database = await settled(request)
  database.close()
}

function settled<T>(request: Request<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.addEventListener('success', () => resolve(request.result))
    request.addEventListener('error', () => reject(request.error))
  })
}
