// What is said where a change cannot be taken back.

import { told } from '../../src/ground/locale.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { Change } from '../../src/memory/memory.ts'
import { changeSaid } from './change.words.ts'

export const takesBack = told(
  (locale, change: Change) => locale.say`Undo this change of yours: ${changeSaid(change, locale)}?`,
)

export const changedSince = new Problem({
  what: ({ say }) => say`It was changed again since, so I leave it as it is.`,
  expected: ({ say }) => say`a look at what was changed, and a change by hand`,
  example: 'history',
})

export const onlyModeratorsUndo = new Problem({
  what: ({ say }) => say`Only moderators change what the club shares.`,
  expected: ({ say }) => say`a moderator to ask for it`,
  example: 'history',
})
