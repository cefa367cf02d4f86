// Opens the memory and puts its parts together.

import { type Database, inTransaction } from '../database.ts'
import type { Memory } from '../memory.ts'
import { forgetOld } from '../retention.ts'
import { answeredMemory } from '../stores/answered.ts'
import { answerMemory } from '../stores/answers.ts'
import { dueMemory } from '../stores/due.ts'
import { historyMemory } from '../stores/history.ts'
import { houseMemory } from '../stores/house.ts'
import { kitMemory } from '../stores/kit.ts'
import { lessonMemory } from '../stores/lessons.ts'
import { logMemory } from '../stores/log.ts'
import { memberMemory } from '../stores/members.ts'
import { noticedMemory } from '../stores/noticed.ts'
import { questionMemory } from '../stores/questions.ts'
import { reminderMemory } from '../stores/reminders.ts'
import { connect, type MemoryPlace } from './connect.ts'
import { migrate } from './migrate.ts'
import { migrations } from './migrations.ts'
import { impatient } from './postgres.ts'
import { readyToWrite } from './sqlite.ts'
import { asMemoryError } from './unusable.ts'

/**
 * Ready to use when the promise resolves. What a promise of the memory has acknowledged by resolving is on
 * the disk. Throws a MemoryError where the database cannot be used, or a newer program wrote it.
 */
export async function openMemory(place: MemoryPlace): Promise<Memory> {
  return memoryIn(await openDatabase(place).catch(error => Promise.reject(asMemoryError(error, place))))
}

/** A change of the schema may take its time; what people ask may not. */
async function openDatabase(place: MemoryPlace): Promise<Database> {
  const db = connect(place)
  try {
    if (!place.databaseUrl) await readyToWrite(db)
    await migrate(db, migrations)
  } catch (error) {
    await db.destroy()
    throw error
  }
  if (place.dataFolder === ':memory:' && !place.databaseUrl) return db
  await db.destroy()
  return connect(place, impatient)
}

/** The memory in a database of this program's schema. */
export function memoryIn(db: Database): Memory {
  const questions = questionMemory(db)
  return {
    questions,
    answered: answeredMemory(db),
    kit: kitMemory(db),
    house: houseMemory(db),
    answers: answerMemory(db),
    due: dueMemory(db),
    reminders: reminderMemory(db),
    log: logMemory(db),
    history: historyMemory(db, memoryIn),
    lessons: lessonMemory(db),
    noticed: noticedMemory(db),
    members: memberMemory(db),
    forgetOld: now => forgetOld(db, now),
    together: work => inTransaction(db, transaction => work(memoryIn(transaction))),
    close: async () => {
      await questions.written()
      await db.destroy()
    },
  }
}
