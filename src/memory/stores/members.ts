// Everything kept about one person, to hand it out or to delete it. Whoever adds a table with people in it adds it here.

import { type Database, inTransaction, leaveNoTrace } from '../database.ts'
import type { MemberMemory } from '../memory.ts'
import { directCommunityOf, type Owner } from '../owner.ts'
import { answeredFromRow } from './answered.ts'
import { answerMemory } from './answers.ts'
import { dueMemory } from './due.ts'
import { changeFromRow, changesBy } from './history.ts'
import { houseMemory } from './house.ts'
import { entriesOf, entryFromRow } from './kit.ts'
import { learnedBy, pendingFromRow, pendingOf } from './lessons.ts'
import { chargeFromRow, chargesOf } from './log.ts'
import { reminderMemory } from './reminders.ts'

/** Their own, and what they set as the only moderator of their direct messages. */
const ownersOf = (person: string): readonly Owner[] => [
  { scope: 'person', id: person },
  { scope: 'community', id: directCommunityOf(person) },
]

export function memberMemory(db: Database): MemberMemory {
  /** It is deleted whatever becomes of this: a reader, or a full disk, may hinder it. */
  const withoutTrace = () => leaveNoTrace(db).catch(() => {})

  return {
    export: async person => ({
      kit: (await Promise.all(ownersOf(person).map(owner => entriesOf(db, owner).orderBy('name').execute())))
        .flat()
        .map(entryFromRow),
      answered: (
        await db.selectFrom('answered').selectAll().where('asked_by', '=', person).orderBy('answered_at').execute()
      ).map(answeredFromRow),
      reminders: await reminderMemory(db).of(person),
      waiting: (await dueMemory(db).of(person, 'question')).map(({ body }) => body),
      log: (
        await Promise.all(ownersOf(person).map(owner => chargesOf(db, owner).orderBy('name').orderBy('at').execute()))
      )
        .flat()
        .map(chargeFromRow),
      alone: [
        ...[await houseMemory(db).rules(directCommunityOf(person))].filter(rules => Object.keys(rules).length > 0),
        ...(await answerMemory(db).list(directCommunityOf(person))),
      ],
      learned: (await learnedBy(db, person).orderBy('question').execute()).map(({ question }) => question),
      pending: (await pendingOf(db, person).execute()).map(pendingFromRow),
      changed: (await changesBy(db, person).orderBy('at').execute()).map(changeFromRow),
    }),
    forget: async person => {
      await inTransaction(db, async transaction => {
        const alone = directCommunityOf(person)
        const owners = [person, alone]
        await transaction.deleteFrom('kit').where('owner', 'in', owners).execute()
        await transaction.deleteFrom('answered').where('asked_by', '=', person).execute()
        await transaction.deleteFrom('due').where('person', '=', person).execute()
        await transaction.deleteFrom('log').where('owner', 'in', owners).execute()
        await transaction.deleteFrom('house').where('community', '=', alone).execute()
        await transaction.deleteFrom('answers').where('community', '=', alone).execute()
        await transaction.deleteFrom('changes').where('community', '=', alone).execute()
        await transaction.deleteFrom('lesson_learned').where('person', '=', person).execute()
        // What the community shares keeps its history, without the person.
        const theirs = transaction.updateTable('changes').set({ person: '', name: '' })
        await theirs.where('person', '=', person).where('scope', '=', 'community').execute()
        await transaction.deleteFrom('changes').where('person', '=', person).execute()
        await transaction.deleteFrom('lesson_pending').where('person', '=', person).execute()
      })
      if (!db.isTransaction) await withoutTrace()
    },
    leaveNoTrace: withoutTrace,
  }
}
