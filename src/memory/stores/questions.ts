// Questions kept under a short id, so that a button can ask them again after a restart.

import { createHash } from 'node:crypto'
import type { Database } from '../database.ts'
import type { QuestionMemory } from '../memory.ts'

/** 96 bits of SHA-256 in 16 URL-safe characters. */
const idOf = (question: string): string => createHash('sha256').update(question).digest('base64url').slice(0, 16)
const dayOf = (time: Date): string => time.toISOString().slice(0, 10)

export function questionMemory(db: Database): QuestionMemory {
  const keepAll: QuestionMemory['keepAll'] = async questions => {
    const kept_on = dayOf(new Date())
    const rows = questions.map(question => ({ id: idOf(question), question, kept_on }))
    if (rows.length === 0) return []
    await db
      .insertInto('questions')
      // In one order, so that two writers never wait for each other; each once, as PostgreSQL wants it.
      .values([...new Map(rows.map(row => [row.id, row])).values()].toSorted((a, b) => (a.id < b.id ? -1 : 1)))
      .onConflict(conflict => conflict.column('id').doUpdateSet({ kept_on }).where('questions.kept_on', '<', kept_on))
      .execute()
    return rows.map(({ id }) => id)
  }
  return {
    keepAll,
    keep: async question => (await keepAll([question]))[0] ?? '',
    async find(id) {
      const row = await db.selectFrom('questions').select('question').where('id', '=', id).executeTakeFirst()
      return row?.question
    },
  }
}
