// What each person has learned, and the question that waits for their answer.

import type { Migration } from 'kysely/migration'

export const lessons: Migration = {
  async up(db) {
    await db.schema
      .createTable('lesson_learned')
      .addColumn('person', 'text', column => column.notNull())
      .addColumn('question', 'text', column => column.notNull())
      .addPrimaryKeyConstraint('lesson_learned_key', ['person', 'question'])
      .execute()
    await db.schema
      .createTable('lesson_pending')
      .addColumn('person', 'text', column => column.primaryKey())
      .addColumn('question', 'text', column => column.notNull())
      .addColumn('seed', 'integer', column => column.notNull())
      .execute()
  },
}
