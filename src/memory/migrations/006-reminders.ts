// Reminders that are still to come, and who is about to give one.

import type { Migration } from 'kysely/migration'

export const reminders: Migration = {
  async up(db) {
    await db.schema
      .createTable('reminders')
      .addColumn('id', 'text', column => column.primaryKey())
      .addColumn('code', 'text', column => column.notNull())
      .addColumn('person', 'text', column => column.notNull())
      .addColumn('place', 'text', column => column.notNull())
      .addColumn('channel', 'text', column => column.notNull())
      .addColumn('kind', 'text', column => column.notNull())
      .addColumn('about', 'text', column => column.notNull())
      .addColumn('set_at', 'text', column => column.notNull())
      .addColumn('due_at', 'text', column => column.notNull())
      .addColumn('low_s', 'integer', column => column.notNull())
      .addColumn('high_s', 'integer', column => column.notNull())
      .addColumn('leased_until', 'text', column => column.notNull())
      .execute()
    for (const column of ['person', 'due_at']) {
      await db.schema.createIndex(`reminders_${column}`).on('reminders').column(column).execute()
    }
  },
}
