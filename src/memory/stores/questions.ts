// Questions kept under a short id, so that a button can ask them again after a restart.

import { createHash } from 'node:crypto'
import type { Database } from '../database.ts'
import type { QuestionMemory } from '../memory.ts'

/** 96 bits of SHA-256 in 16 URL-safe characters. */
const idOf = (question: string): string => createHash('sha256').update(question).digest('base64url').slice(0, 16)
const dayOf = (time: Date): string => time.toISOString().slice(0, 10)

export function questionMemory(db: Database): QuestionMemory {
  return {
    async keep(question) {
      const id = idOf(question)
      const kept_on = dayOf(new Date())
      await db
        .insertInto('questions')
        .values({ id, question, kept_on })
        .onConflict(conflict => conflict.column('id').doUpdateSet({ kept_on }).where('questions.kept_on', '<', kept_on))
        .execute()
      return id
    },
    async find(id) {
      const row = await db.selectFrom('questions').select('question').where('id', '=', id).executeTakeFirst()
      return row?.question
    },
    async forgetBefore(time) {
      await db.deleteFrom('questions').where('kept_on', '<', dayOf(time)).execute()
    },
  }
}
