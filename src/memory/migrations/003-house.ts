// What moderators have set for their community, one row a rule.

import type { Migration } from 'kysely/migration'

export const house: Migration = {
  async up(db) {
    await db.schema
      .createTable('house')
      .addColumn('community', 'text', column => column.notNull())
      .addColumn('rule', 'text', column => column.notNull())
      .addColumn('chemistry', 'text', column => column.notNull())
      .addColumn('value', 'text', column => column.notNull())
      .addPrimaryKeyConstraint('house_key', ['community', 'rule', 'chemistry'])
      .execute()
  },
}
