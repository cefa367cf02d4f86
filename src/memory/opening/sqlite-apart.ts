// A SQLite file that is read here, where nobody waits for it, and written in a thread of its own: a commit waits for the
// disk, and nobody else waits with it.

import { once } from 'node:events'
import { statSync } from 'node:fs'
import { Worker } from 'node:worker_threads'
import {
  CompiledQuery,
  type DatabaseConnection,
  type Dialect,
  type Driver,
  type QueryResult,
  SelectQueryNode,
  type SqliteDatabase,
  SqliteIntrospector,
  SqliteQueryCompiler,
} from 'kysely'
import { MemoryError } from '../memory-error.ts'
import { TransactionalAdapter } from './sqlite.ts'
import { openSqlite, waitLess } from './sqlite-file.ts'
import { answered, type Written } from './sqlite-statement.ts'

export const apartDialect = (file: string): Dialect => ({
  createDriver: () => new ApartDriver(file),
  createAdapter: () => new ApartAdapter(),
  createQueryCompiler: () => new SqliteQueryCompiler(),
  createIntrospector: db => new SqliteIntrospector(db),
})

/** One writes at a time, and anybody reads meanwhile. */
class ApartAdapter extends TransactionalAdapter {
  override get supportsMultipleConnections(): boolean {
    return true
  }
}

class ApartDriver implements Driver {
  readonly #file: string
  #id: number | undefined
  #reader: SqliteDatabase | undefined
  #writer: Worker | undefined
  /** Resolves when whoever writes has ended. */
  #free: Promise<void> = Promise.resolve()

  constructor(file: string) {
    this.#file = file
  }

  async init(): Promise<void> {
    this.#reader = openSqlite(this.#file)
    this.#id = this.#idNow()
    this.#reader.prepare(waitLess).run([])
    // Begun now, it is there when the first is to be written.
    this.begin().unref()
  }

  #idNow = () => statSync(this.#file, { throwIfNoEntry: false })?.ino

  /** Whoever took the file away has all that is written to it from then on gone with the process. */
  #heedGone(): void {
    if (this.#idNow() !== this.#id) throw new MemoryError(`${this.#file} was taken away`, 'closed')
  }

  /** A new one where the last has ended: a thread without memory ends neither the program nor what is asked next. */
  begin(): Worker {
    if (this.#writer) return this.#writer
    const writer = new Worker(new URL('./sqlite-writer.ts', import.meta.url), { workerData: this.#file })
    const gone = () => {
      if (this.#writer === writer) this.#writer = undefined
    }
    this.#writer = writer.once('error', gone).once('exit', gone)
    return writer
  }

  async acquireConnection(): Promise<Lent> {
    return new Lent(this)
  }

  /** Resolves when nobody else writes, with what lets the next one write. */
  async mayWrite(): Promise<() => void> {
    const { promise, resolve } = Promise.withResolvers<void>()
    const before = this.#free
    this.#free = promise
    await before
    return resolve
  }

  read(sql: string, parameters: readonly unknown[]): QueryResult<unknown> {
    this.#heedGone()
    return answered(this.#reader as SqliteDatabase, sql, parameters)
  }

  async write(writer: Worker, sql: string, parameters: readonly unknown[]): Promise<QueryResult<unknown>> {
    // What it had begun is undone; what would follow must not stand alone.
    if (writer !== this.#writer) throw new MemoryError('the thread that wrote has ended', 'away')
    if (sql !== 'rollback') this.#heedGone()
    // The program ends when nothing is left to be written.
    writer.ref()
    writer.postMessage({ sql, parameters })
    const [{ result, error }] = (await once(writer, 'message').finally(() => writer.unref())) as [Written]
    if (!result) throw Object.assign(new Error(error?.message), error)
    return result
  }

  async destroy(): Promise<void> {
    await this.mayWrite()
    await this.#writer?.terminate()
    this.#reader?.close()
  }

  beginTransaction = (lent: DatabaseConnection) => say(lent, 'begin')
  commitTransaction = (lent: DatabaseConnection) => say(lent, 'commit')
  rollbackTransaction = (lent: DatabaseConnection) => say(lent, 'rollback')
  releaseConnection = async (lent: DatabaseConnection) => (lent as Lent).release()
}

const say = async (lent: DatabaseConnection, word: string): Promise<void> => {
  await lent.executeQuery(CompiledQuery.raw(word))
}

/** Lent for a query, or for all of a transaction. */
class Lent implements DatabaseConnection {
  readonly #driver: ApartDriver
  #done: (() => void) | undefined
  #writer: Worker | undefined

  constructor(driver: ApartDriver) {
    this.#driver = driver
  }

  async executeQuery<R>({ query, sql, parameters }: CompiledQuery): Promise<QueryResult<R>> {
    if (!this.#done && SelectQueryNode.is(query)) return this.#driver.read(sql, parameters) as QueryResult<R>
    this.#done ??= await this.#driver.mayWrite()
    this.#writer ??= this.#driver.begin()
    return (await this.#driver.write(this.#writer, sql, parameters)) as QueryResult<R>
  }

  // biome-ignore lint/correctness/useYield: nothing of ours reads in a stream.
  async *streamQuery(): AsyncGenerator<never> {
    throw new Error('reads no streams')
  }

  release(): void {
    this.#done?.()
  }
}
