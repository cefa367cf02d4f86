// Every change of the schema, in the order in which they are made. Forward only: never edit one that was released.

import type { Migration } from 'kysely/migration'
import { questions } from './001-questions.ts'
import { kit } from './002-kit.ts'
import { house } from './003-house.ts'
import { questionAge } from './004-question-age.ts'
import { answers } from './005-answers.ts'
import { reminders } from './006-reminders.ts'
import { log } from './007-log.ts'
import { lessons } from './008-lessons.ts'

export const migrations: Readonly<Record<string, Migration>> = {
  '001-questions': questions,
  '002-kit': kit,
  '003-house': house,
  '004-question-age': questionAge,
  '005-answers': answers,
  '006-reminders': reminders,
  '007-log': log,
  '008-lessons': lessons,
}
