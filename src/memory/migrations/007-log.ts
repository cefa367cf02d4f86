// The charge log.

import type { Migration } from 'kysely/migration'

export const log: Migration = {
  async up(db) {
    await db.schema
      .createTable('log')
      .addColumn('id', 'text', column => column.primaryKey())
      .addColumn('scope', 'text', column => column.notNull())
      .addColumn('owner', 'text', column => column.notNull())
      .addColumn('name', 'text', column => column.notNull())
      .addColumn('notation', 'text', column => column.notNull())
      .addColumn('at', 'text', column => column.notNull())
      .addColumn('note', 'text', column => column.notNull())
      .execute()
    await db.schema.createIndex('log_pack').on('log').columns(['scope', 'owner', 'name', 'at']).execute()
  },
}
