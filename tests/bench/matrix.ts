// What it costs to keep the message keys of encrypted rooms: each change on disk, and all of them read at a start.

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { IDBFactory } from 'fake-indexeddb'
import type { Database, Factory, Request } from '../../src/matrix/keys/indexeddb-types.ts'
import { openLastingIndexedDB } from '../../src/matrix/keys/lasting-indexeddb.ts'
import type { Row } from './benches.ts'
import { percentile, timesOf } from './timing.ts'

const sessions = 5_000
/** About the size of one encrypted group session. */
const session = { ciphertext: 'x'.repeat(1_800) }

export default async function matrixBench(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'chargehand-bench-'))
  const file = join(folder, 'keys.sqlite')
  try {
    const memoryOnly = await sessionsIn(new (IDBFactory as unknown as new () => Factory)())
    const unkept_ms = percentile(await timesOf(500, round => keep(memoryOnly, round)), 50)

    const lasting = await openLastingIndexedDB(file, fault => {
      throw fault
    })
    const onDisk = await sessionsIn(lasting.factory)
    const kept_ms = percentile(await timesOf(500, round => keep(onDisk, round)), 50)
    for (let round = 0; round < sessions; round++) await keep(onDisk, round)
    lasting.close()

    const before = performance.now()
    const again = await openLastingIndexedDB(file, () => {})
    const read_ms = performance.now() - before
    again.close()
    return [
      {
        name: 'a key kept on disk, median',
        value: `${kept_ms.toFixed(2)} ms`,
        ratio: `${(kept_ms / unkept_ms).toFixed(1)} times memory alone`,
      },
      { name: `${sessions} keys read at a start`, value: `${read_ms.toFixed(0)} ms` },
    ]
  } finally {
    rmSync(folder, { recursive: true })
  }
}

function sessionsIn(factory: Factory): Promise<Database> {
  const request = factory.open('keys', 1)
  request.addEventListener('upgradeneeded', () => request.result.createObjectStore('sessions'))
  return settled(request)
}

const settled = <T>(request: Request<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.addEventListener('success', () => resolve(request.result))
    request.addEventListener('error', () => reject(request.error))
  })

function keep(database: Database, round: number): Promise<void> {
  const transaction = database.transaction(['sessions'], 'readwrite')
  transaction.objectStore('sessions').put(session, `room ${round % 50} session ${round}`)
  return new Promise(resolve => transaction.addEventListener('complete', resolve))
}
