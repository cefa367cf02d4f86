// Questions behind buttons, and which message answered which.

import type { Migration } from 'kysely/migration'

export const questions: Migration = {
  async up(db) {
    await db.schema
      .createTable('questions')
      .addColumn('id', 'text', column => column.primaryKey())
      .addColumn('question', 'text', column => column.notNull())
      .execute()
    await db.schema
      .createTable('answered')
      .addColumn('question_message', 'text', column => column.primaryKey())
      .addColumn('answer_message', 'text', column => column.notNull())
      .addColumn('place', 'text', column => column.notNull())
      .addColumn('asked_by', 'text', column => column.notNull())
      .addColumn('question', 'text', column => column.notNull())
      .addColumn('answered_at', 'text', column => column.notNull())
      .execute()
    for (const column of ['answer_message', 'asked_by', 'answered_at']) {
      await db.schema.createIndex(`answered_${column}`).on('answered').column(column).execute()
    }
  },
}
