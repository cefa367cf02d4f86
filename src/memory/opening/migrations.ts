// Every change of the schema, in the order in which they are made. Forward only: never edit one that was released.

import type { Kysely } from 'kysely'
import type { Migration } from 'kysely/migration'

// biome-ignore lint/suspicious/noExplicitAny: what the schema is like while it changes, no type knows.
type AnyDatabase = Kysely<any>

interface Together {
  /** Columns that are the primary key together. */
  readonly key?: readonly string[]
  /** Columns that no two rows share. */
  readonly title?: readonly string[]
}

/** A table of texts, none of them null: "id key" is its primary key by itself, "pinned integer" a number. */
async function addTable(db: AnyDatabase, table: string, columns: string, together: Together = {}): Promise<void> {
  const named = db.schema.createTable(table)
  const filled = columns.split(', ').reduce((made, column) => {
    const [name = '', is = 'text'] = column.split(' ')
    return is === 'key'
      ? made.addColumn(name, 'text', of => of.primaryKey())
      : made.addColumn(name, is as 'text' | 'integer', of => of.notNull())
  }, named)
  const { key, title } = together
  const keyed = key ? filled.addPrimaryKeyConstraint(`${table}_key`, key as never) : filled
  await (title ? keyed.addUniqueConstraint(`${table}_title`, title as never) : keyed).execute()
}

async function addIndexes(db: AnyDatabase, table: string, ...columns: readonly string[]): Promise<void> {
  for (const column of columns) await db.schema.createIndex(`${table}_${column}`).on(table).column(column).execute()
}

export const migrations: Readonly<Record<string, Migration>> = {
  /** Questions behind buttons, and which message answered which. */
  '001-questions': {
    async up(db) {
      await addTable(db, 'questions', 'id key, question')
      const columns = 'question_message key, answer_message, place, asked_by, question, answered_at'
      await addTable(db, 'answered', columns)
      await addIndexes(db, 'answered', 'answer_message', 'asked_by', 'answered_at')
    },
  },
  /** Packs, chargers and sources saved by name. */
  '002-kit': {
    up: db => addTable(db, 'kit', 'scope, owner, name, kind, notation', { key: ['scope', 'owner', 'name'] }),
  },
  /** What moderators have set for their community, one row a rule. */
  '003-house': {
    up: db => addTable(db, 'house', 'community, rule, chemistry, value', { key: ['community', 'rule', 'chemistry'] }),
  },
  /** The day on which a question was last kept, so that old ones can go. */
  '004-question-age': {
    async up(db) {
      await db.schema
        .alterTable('questions')
        .addColumn('kept_on', 'text', column => column.notNull().defaultTo(''))
        .execute()
      await addIndexes(db, 'questions', 'kept_on')
    },
  },
  /** Standard answers, and the card of each that stands in a chat. */
  '005-answers': {
    async up(db) {
      const saying = 'id key, community, title_key, title, kind, content, canonical, place'
      const columns = `${saying}, message, link, pinned integer, digest, revision integer`
      await addTable(db, 'answers', columns, { title: ['community', 'title_key'] })
    },
  },
  /** Reminders that are still to come, and who is about to give one. */
  '006-reminders': {
    async up(db) {
      const told = 'id key, code, person, place, channel, kind, about, set_at, due_at'
      await addTable(db, 'reminders', `${told}, low_s integer, high_s integer, leased_until`)
      await addIndexes(db, 'reminders', 'person', 'due_at')
    },
  },
  '007-log': {
    async up(db) {
      await addTable(db, 'log', 'id key, scope, owner, name, notation, at, note')
      await db.schema.createIndex('log_pack').on('log').columns(['scope', 'owner', 'name', 'at']).execute()
    },
  },
  /** What each person has learned, and the question that waits for their answer. */
  '008-lessons': {
    async up(db) {
      await addTable(db, 'lesson_learned', 'person, question', { key: ['person', 'question'] })
      await addTable(db, 'lesson_pending', 'person key, question, seed integer')
    },
  },
  /** Who changed what of all that a community shares. */
  '009-changes': {
    async up(db) {
      const who = 'id key, community, scope, person, name, at'
      await addTable(db, 'changes', `${who}, change, undone integer, undoes`)
      await db.schema.createIndex('changes_latest').on('changes').columns(['community', 'scope', 'at']).execute()
      await addIndexes(db, 'changes', 'person', 'at')
    },
  },
  /** A danger that was noted of a pack of the kit; none is empty. */
  '010-kit-note': {
    async up(db) {
      const added = db.schema.alterTable('kit').addColumn('note', 'text', column => column.notNull().defaultTo(''))
      await added.execute()
    },
  },
  /** Work that is due, whatever it is; the reminders that wait are the first of it. */
  '011-due': {
    async up(db) {
      await addTable(db, 'due', 'id key, kind, person, place, body, due_at, latest_at, done_at, tries integer')
      await addIndexes(db, 'due', 'person', 'done_at')
      await db.schema.createIndex('due_next').on('due').columns(['kind', 'done_at', 'due_at']).execute()
      for (const reminder of await db.selectFrom('reminders').selectAll().execute()) {
        const { id, code, person, place, channel, kind, about, set_at, due_at, low_s, high_s } = reminder
        const over_ms = kind === 'stay' ? Date.parse(set_at) + low_s * 1000 : Number.POSITIVE_INFINITY
        const latest_at = new Date(Math.min(Date.parse(due_at) + 86_400_000, over_ms)).toISOString()
        const body = JSON.stringify({ code, channel, kind, about, setAt: set_at, dueAt: due_at, low_s, high_s })
        const row = { id, kind: 'reminder', person, place, body, due_at, latest_at, done_at: '', tries: 0 }
        await db.insertInto('due').values(row).execute()
      }
      await db.schema.dropTable('reminders').execute()
    },
  },
  /** When the card of a standard answer was edited last; empty where it never was. */
  '012-card-edited': {
    async up(db) {
      const column = db.schema.alterTable('answers').addColumn('edited_at', 'text', of => of.notNull().defaultTo(''))
      await column.execute()
    },
  },
  /** What the digests of clubs that want one tell of. */
  '013-noticed': {
    async up(db) {
      await addTable(db, 'noticed', 'id key, community, kind, about, link, at')
      await db.schema.createIndex('noticed_latest').on('noticed').columns(['community', 'at']).execute()
      await addIndexes(db, 'noticed', 'at')
    },
  },
}
