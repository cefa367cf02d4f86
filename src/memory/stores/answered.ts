// Which message answered which question.

import { type Selectable, sql } from 'kysely'
import type { Database, Tables } from '../database.ts'
import type { AnsweredMemory, AnsweredQuestion } from '../memory.ts'

export function answeredMemory(db: Database): AnsweredMemory {
  const by = async (column: 'question_message' | 'answer_message', message: string) => {
    const row = await db.selectFrom('answered').selectAll().where(column, '=', message).executeTakeFirst()
    return row && answeredFromRow(row)
  }
  return {
    /** A question that was edited is recorded anew: the later answer holds. */
    async record(answered) {
      const row = toRow(answered)
      await db
        .insertInto('answered')
        .values(row)
        .onConflict(conflict => conflict.column('question_message').doUpdateSet(row))
        .execute()
    },
    byQuestion: message => by('question_message', message),
    byAnswer: message => by('answer_message', message),
    async readersOf(message) {
      const start = `${message}#`
      const rows = await db
        .selectFrom('answered')
        .select('asked_by')
        .distinct()
        .where(sql`substr(answer_message, 1, ${start.length})`, '=', start)
        .execute()
      return rows.map(({ asked_by }) => asked_by)
    },
  }
}

type Row = Selectable<Tables['answered']>

const toRow = (answered: AnsweredQuestion): Row => ({
  question_message: answered.questionMessage,
  answer_message: answered.answerMessage,
  place: answered.place,
  asked_by: answered.askedBy,
  question: answered.question,
  answered_at: answered.answeredAt.toISOString(),
})

export const answeredFromRow = (row: Row): AnsweredQuestion => ({
  questionMessage: row.question_message,
  answerMessage: row.answer_message,
  place: row.place,
  askedBy: row.asked_by,
  question: row.question,
  answeredAt: new Date(row.answered_at),
})
