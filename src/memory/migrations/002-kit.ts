// Packs, chargers and sources saved by name.

import type { Migration } from 'kysely/migration'

export const kit: Migration = {
  async up(db) {
    await db.schema
      .createTable('kit')
      .addColumn('scope', 'text', column => column.notNull())
      .addColumn('owner', 'text', column => column.notNull())
      .addColumn('name', 'text', column => column.notNull())
      .addColumn('kind', 'text', column => column.notNull())
      .addColumn('notation', 'text', column => column.notNull())
      .addPrimaryKeyConstraint('kit_key', ['scope', 'owner', 'name'])
      .execute()
  },
}
