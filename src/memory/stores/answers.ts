// The standard answers of communities.

import { randomUUID } from 'node:crypto'
import type { Selectable, Updateable } from 'kysely'
import { asked, type Database, inTransaction, oneAtATime, type Tables } from '../database.ts'
import type { AnswerMemory, Card, StandardAnswer } from '../standard-answer.ts'

export function answerMemory(db: Database): AnswerMemory {
  const rowsOf = (community: string) => db.selectFrom('answers').selectAll().where('community', '=', community)

  const sameAs = asked<Row, [community: string, canonical: string]>(db, () => rowsOf('').where('canonical', '=', ''))

  return {
    add: (answer, most) =>
      inTransaction(db, async transaction => {
        await oneAtATime(transaction, `answers of ${answer.community}`)
        const { count } = await transaction
          .selectFrom('answers')
          .select(({ fn }) => fn.countAll().as('count'))
          .where('community', '=', answer.community)
          .executeTakeFirstOrThrow()
        if (Number(count) >= most) return 'full'
        const added: StandardAnswer = { id: randomUUID(), ...answer, revision: 1 }
        const { numInsertedOrUpdatedRows } = await transaction
          .insertInto('answers')
          .values(toRow(added))
          .onConflict(conflict => conflict.columns(['community', 'title_key']).doNothing())
          .executeTakeFirstOrThrow()
        return numInsertedOrUpdatedRows ? added : 'taken'
      }),
    async get(id) {
      const row = await db.selectFrom('answers').selectAll().where('id', '=', id).executeTakeFirst()
      return row && fromRow(row)
    },
    async find(community, title) {
      const row = await rowsOf(community).where('title_key', '=', keyOf(title)).executeTakeFirst()
      return row && fromRow(row)
    },
    async asking(community, canonical) {
      return (await sameAs(community, canonical)).map(fromRow)
    },
    async list(community) {
      return (await rowsOf(community).orderBy('title_key').execute()).map(fromRow)
    },
    async communities() {
      const rows = await db.selectFrom('answers').select('community').distinct().execute()
      return rows.map(({ community }) => community)
    },
    change: (id, changes) =>
      inTransaction(db, async transaction => {
        const { title } = changes
        const here = await transaction.selectFrom('answers').select('community').where('id', '=', id).executeTakeFirst()
        if (!here) return 'missing'
        if (title !== undefined) {
          const other = await transaction
            .selectFrom('answers')
            .select('id')
            .where('community', '=', here.community)
            .where('title_key', '=', keyOf(title))
            .where('id', '!=', id)
            .executeTakeFirst()
          if (other) return 'taken'
        }
        const title_key = title === undefined ? undefined : keyOf(title)
        const named: Updateable<Tables['answers']> = { ...changes, title_key }
        await transaction
          .updateTable('answers')
          .set(named)
          .set(({ eb }) => ({ revision: eb('revision', '+', 1) }))
          .where('id', '=', id)
          .execute()
        return 'changed'
      }),
    async settle({ id, revision }, { place, canonical, card }) {
      const { numUpdatedRows } = await db
        .updateTable('answers')
        .set({ place, canonical, ...cardColumns(card), revision: revision + 1 })
        .where(({ and }) => and({ id, revision }))
        .executeTakeFirst()
      return numUpdatedRows > 0n
    },
    async remove(id) {
      const row = await db.deleteFrom('answers').where('id', '=', id).returningAll().executeTakeFirst()
      return row && fromRow(row)
    },
  }
}

const keyOf = (title: string): string => title.normalize('NFC').toLowerCase()
type Row = Selectable<Tables['answers']>

const toRow = ({ card, ...answer }: StandardAnswer): Row => ({
  ...answer,
  title_key: keyOf(answer.title),
  ...cardColumns(card),
})

/** No card is an empty message. */
const cardColumns = (card: Card | undefined): Pick<Row, 'message' | 'link' | 'pinned' | 'digest' | 'edited_at'> => ({
  message: card?.message ?? '',
  link: card?.link ?? '',
  pinned: card?.pinned ? 1 : 0,
  digest: card?.digest ?? '',
  edited_at: card?.editedAt?.toISOString() ?? '',
})

function fromRow({ title_key: _, message, link, pinned, digest, edited_at, ...answer }: Row): StandardAnswer {
  if (message === '') return answer
  const editedAt = edited_at === '' ? undefined : new Date(edited_at)
  return { ...answer, card: { message, link: link || undefined, pinned: pinned === 1, digest, editedAt } }
}
