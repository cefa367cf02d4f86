// Questions kept under a short id, so that a button can ask them again after a restart.

import { createHash } from 'node:crypto'
import type { Database } from '../database.ts'
import type { QuestionMemory } from '../memory.ts'

/** 96 bits of SHA-256 in 16 URL-safe characters. */
const idOf = (question: string): string => createHash('sha256').update(question).digest('base64url').slice(0, 16)
const dayOf = (time: Date): string => time.toISOString().slice(0, 10)

/** `written` resolves when all that was asked to be kept so far is, or could not be. */
export function questionMemory(db: Database): QuestionMemory & { written(): Promise<void> } {
  /** What comes while others are written is written together with the next. */
  let next: { readonly all: Map<string, string>; readonly written: Promise<unknown> } | undefined
  let last: Promise<unknown> = Promise.resolve()

  function together(questions: ReadonlyMap<string, string>): Promise<unknown> {
    if (!next) {
      const all = new Map<string, string>()
      const write = () => {
        next = undefined
        return insert(all)
      }
      next = { all, written: last.then(write, write) }
      last = next.written
    }
    for (const [id, question] of questions) next.all.set(id, question)
    return next.written
  }

  function insert(all: ReadonlyMap<string, string>): Promise<unknown> {
    const kept_on = dayOf(new Date())
    return (
      db
        .insertInto('questions')
        // In one order, so that two writers never wait for each other.
        .values(
          [...all].map(([id, question]) => ({ id, question, kept_on })).toSorted((a, b) => (a.id < b.id ? -1 : 1)),
        )
        .onConflict(conflict => conflict.column('id').doUpdateSet({ kept_on }).where('questions.kept_on', '<', kept_on))
        .execute()
    )
  }

  const keepAll: QuestionMemory['keepAll'] = async questions => {
    const ids = questions.map(idOf)
    if (ids.length > 0) await together(new Map(ids.map((id, at) => [id, questions[at] ?? ''])))
    return ids
  }
  return {
    keepAll,
    idOf,
    written: () =>
      last.then(
        () => {},
        () => {},
      ),
    keep: async question => (await keepAll([question]))[0] ?? '',
    async find(id) {
      const row = await db.selectFrom('questions').select('question').where('id', '=', id).executeTakeFirst()
      return row?.question
    },
  }
}
