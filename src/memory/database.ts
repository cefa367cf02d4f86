// The tables, the same on SQLite and PostgreSQL. Times are ISO 8601 text in UTC, which also sorts by time.

import { type CompiledQuery, type Kysely, PostgresAdapter, SqliteAdapter, sql } from 'kysely'
import type { Noticed } from './noticed.ts'

export interface Tables {
  /** `kept_on` is a day, so that a question asked all day long is written once. */
  questions: { id: string; question: string; kept_on: string }
  answered: {
    question_message: string
    answer_message: string
    place: string
    asked_by: string
    question: string
    answered_at: string
  }
  kit: {
    scope: 'person' | 'community'
    owner: string
    name: string
    kind: 'pack' | 'charger' | 'source'
    notation: string
    /** The danger that was noted of a pack; none is empty. */
    note: string
  }
  /** One row a rule, so that two moderators who change different rules at once do not undo each other. */
  house: { community: string; rule: string; chemistry: string; value: string }
  /** No card is an empty message; `pinned` is 0 or 1; `title_key` is the title without regard to case. */
  answers: {
    id: string
    community: string
    title_key: string
    title: string
    kind: 'question' | 'text'
    content: string
    canonical: string
    place: string
    message: string
    link: string
    pinned: number
    digest: string
    revision: number
    edited_at: string
  }
  /** `body` is JSON, only ever read as a whole; no `latest_at` is empty, as `done_at` is of what waits. */
  due: {
    id: string
    kind: string
    person: string
    place: string
    body: string
    due_at: string
    latest_at: string
    done_at: string
    tries: number
  }
  /** `note` is what was noted of the charge, as JSON: it is only ever read as a whole. */
  log: {
    id: string
    scope: 'person' | 'community'
    owner: string
    name: string
    notation: string
    at: string
    note: string
  }
  /** `change` is JSON, only ever read as a whole; `undone` is 0 or 1; `undoes` the id of another change, or empty. */
  changes: {
    id: string
    community: string
    scope: 'person' | 'community'
    person: string
    name: string
    at: string
    change: string
    undone: number
    undoes: string
  }
  /** What digests tell of; `link` may be empty. */
  noticed: { id: string; community: string; kind: Noticed['kind']; about: string; link: string; at: string }
  lesson_learned: { person: string; question: string }
  /** At most one a person. */
  lesson_pending: { person: string; question: string; seed: number }
}

export type Database = Kysely<Tables>

/** A query that every question asks: its text is made once, and each time it takes other parameters. */
export function asked<R, P extends readonly unknown[]>(db: Database, make: () => { compile(): CompiledQuery<R> }) {
  let made: CompiledQuery<R> | undefined
  return async (...parameters: P): Promise<readonly R[]> => {
    made ??= make().compile()
    return (await db.executeQuery<R>({ ...made, parameters })).rows
  }
}

/** All of the work or none of it; part of a larger one where that is under way already. */
export const inTransaction = <T>(db: Database, work: (transaction: Database) => Promise<T>): Promise<T> =>
  db.isTransaction ? work(db) : db.transaction().execute(work)

/**
 * Whoever comes second with the same key waits until the first has ended: so no two find room for the last one. SQLite
 * writes for one at a time anyway.
 */
export async function oneAtATime(transaction: Database, key: string): Promise<void> {
  if (transaction.getExecutor().adapter instanceof PostgresAdapter)
    await sql`select pg_advisory_xact_lock(hashtextextended(${key}, 0))`.execute(transaction)
}

/** What was deleted is overwritten in SQLite's file; this takes it out of the log beside it. */
export async function leaveNoTrace(db: Database): Promise<void> {
  if (db.getExecutor().adapter instanceof SqliteAdapter) await sql`pragma wal_checkpoint(truncate)`.execute(db)
}
