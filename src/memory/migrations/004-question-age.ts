// The day on which a question was last kept, so that old ones can go.

import type { Migration } from 'kysely/migration'

export const questionAge: Migration = {
  async up(db) {
    await db.schema
      .alterTable('questions')
      .addColumn('kept_on', 'text', column => column.notNull().defaultTo(''))
      .execute()
    await db.schema.createIndex('questions_kept_on').on('questions').column('kept_on').execute()
  },
}
