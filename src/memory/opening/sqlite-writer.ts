// The thread that writes to a SQLite file: what waits for the disk waits here. Its file is its data.

import { parentPort, workerData } from 'node:worker_threads'
import { openSqlite, waitLess } from './sqlite-file.ts'
import { answered, type Written } from './sqlite-statement.ts'

const database = openSqlite(workerData as string)
database.prepare(waitLess).run([])

parentPort?.on('message', ({ sql, parameters }: { sql: string; parameters: readonly unknown[] }) => {
  let written: Written
  try {
    written = { result: answered(database, sql, parameters) }
  } catch (error) {
    const { message, code, errcode } = error as Error & { code?: string; errcode?: number }
    written = { error: { message, code, errcode } }
  }
  parentPort?.postMessage(written)
})
