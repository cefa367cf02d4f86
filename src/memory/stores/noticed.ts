// The table of what digests tell of.

import { randomUUID } from 'node:crypto'
import type { Database } from '../database.ts'
import type { NoticedMemory } from '../noticed.ts'

export const noticedMemory = (db: Database): NoticedMemory => ({
  async add(community, at, noticed) {
    const row = { id: randomUUID(), community, at: at.toISOString(), ...noticed }
    await db.insertInto('noticed').values(row).execute()
  },
  of: community =>
    db
      .selectFrom('noticed')
      .select(['kind', 'about', 'link'])
      .where('community', '=', community)
      .orderBy('at')
      .execute(),
  async drop(community, until) {
    const told = db.deleteFrom('noticed').where('community', '=', community)
    await told.where('at', '<=', until.toISOString()).execute()
  },
})
