// Standard answers, and the card of each that stands in a chat.

import type { Migration } from 'kysely/migration'

export const answers: Migration = {
  async up(db) {
    await db.schema
      .createTable('answers')
      .addColumn('id', 'text', column => column.primaryKey())
      .addColumn('community', 'text', column => column.notNull())
      .addColumn('title_key', 'text', column => column.notNull())
      .addColumn('title', 'text', column => column.notNull())
      .addColumn('kind', 'text', column => column.notNull())
      .addColumn('content', 'text', column => column.notNull())
      .addColumn('canonical', 'text', column => column.notNull())
      .addColumn('place', 'text', column => column.notNull())
      .addColumn('message', 'text', column => column.notNull())
      .addColumn('link', 'text', column => column.notNull())
      .addColumn('pinned', 'integer', column => column.notNull())
      .addColumn('digest', 'text', column => column.notNull())
      .addColumn('revision', 'integer', column => column.notNull())
      .addUniqueConstraint('answers_title', ['community', 'title_key'])
      .execute()
  },
}
