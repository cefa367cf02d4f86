// Questions kept under a short id, so that a button can ask them again after a restart.

import { createHash } from 'node:crypto'
import type { Database } from './database.ts'
import type { QuestionMemory } from './memory.ts'

/** 96 bits of SHA-256 in 16 URL-safe characters. */
const idOf = (question: string): string =>
  createHash('sha256').update(question).digest('base64url').slice(0, 16)

export function questionMemory(db: Database): QuestionMemory {
  return {
    async keep(question) {
      const id = idOf(question)
      await db
        .insertInto('questions')
        .values({ id, question })
        .onConflict(conflict => conflict.column('id').doNothing())
        .execute()
      return id
    },
    async find(id) {
      const row = await db.selectFrom('questions').select('question').where('id', '=', id).executeTakeFirst()
      return row?.question
    },
  }
}
