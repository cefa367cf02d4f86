// What each person has learned, and the question that waits for their answer.

import type { Selectable } from 'kysely'
import { type Database, inTransaction, type Tables } from '../database.ts'
import type { LessonMemory, PendingQuestion } from '../progress.ts'

export function lessonMemory(db: Database): LessonMemory {
  return {
    async ask(person, { question, seed }) {
      await db
        .insertInto('lesson_pending')
        .values({ person, question, seed })
        .onConflict(conflict => conflict.column('person').doUpdateSet({ question, seed }))
        .execute()
    },
    async pending(person) {
      return (await pendingOf(db, person).execute()).map(pendingFromRow)[0]
    },
    settle: (person, { question, seed }, right) =>
      inTransaction(db, async transaction => {
        const { numDeletedRows } = await transaction
          .deleteFrom('lesson_pending')
          .where(({ and }) => and({ person, question, seed }))
          .executeTakeFirst()
        if (numDeletedRows === 0n) return false
        if (right) {
          await transaction
            .insertInto('lesson_learned')
            .values({ person, question })
            .onConflict(conflict => conflict.columns(['person', 'question']).doNothing())
            .execute()
        }
        return true
      }),
    async learned(person) {
      return (await learnedBy(db, person).orderBy('question').execute()).map(({ question }) => question)
    },
  }
}

export const pendingOf = (db: Database, person: string) =>
  db.selectFrom('lesson_pending').selectAll().where('person', '=', person)
export const learnedBy = (db: Database, person: string) =>
  db.selectFrom('lesson_learned').selectAll().where('person', '=', person)

export const pendingFromRow = ({ question, seed }: Selectable<Tables['lesson_pending']>): PendingQuestion => ({
  question,
  seed,
})
