// A change in words: what became of what, and why it cannot be taken back.

import { whenWords } from '../../src/assistant/cards/cards.words.ts'
import { type Locale, told } from '../../src/ground/locale.ts'
import { Problem } from '../../src/ground/problem.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import type { Change, NotedChange } from '../../src/memory/memory.ts'
import { changesWords } from '../club/house-problems.words.ts'

export function changedBy({ at, name, change, undone, undoes }: NotedChange, locale: Locale): Text {
  const { say, own } = locale
  const who = name === '' ? say`somebody who is forgotten` : own(name)
  const when = whenWords(at, locale)
  const what = changeSaid(change, locale)
  if (undoes !== '') return say`${when}, ${who} took a change back: ${what}`
  return undone ? say`${when}, ${who}: ${what} (taken back)` : say`${when}, ${who}: ${what}`
}

/** What it became, and what it was before. */
export function changeSaid(change: Change, locale: Locale): Text {
  switch (change.of) {
    case 'rules':
      return locale.say`${changesWords(change.after, locale)} (before: ${changesWords(change.before, locale)})`
    case 'answer':
      return answerSaid(change, locale)
    case 'kit':
      return kitSaid(change, locale)
  }
}

type Of<K extends Change['of']> = Extract<Change, { readonly of: K }>

function answerSaid({ before, after }: Of<'answer'>, { say, own }: Locale): Text {
  if (!before || !after) {
    return after ? say`the answer "${own(after.title)}" saved` : say`the answer "${own(before?.title ?? '')}" removed`
  }
  const title = own(before.title)
  const renamed = before.title === after.title ? undefined : say`now "${own(after.title)}"`
  const moved = before.place === after.place ? undefined : say`its card moved`
  const said = before.content === after.content ? undefined : say`it said: ${own(before.content)}`
  return say`the answer "${title}" changed, ${joined([renamed, moved, said], ', ')}`
}

function kitSaid({ before, after }: Of<'kit'>, { say, own }: Locale): Text {
  if (!after) return say`${own(before?.name ?? '')} (${own(before?.notation ?? '')}) removed from the kit`
  if (!before) return say`${own(after.name)} saved as ${own(after.notation)}`
  return before.name === after.name
    ? say`${own(after.name)} is now ${own(after.notation)} (before: ${own(before.notation)})`
    : say`${own(before.name)} is now called ${own(after.name)}`
}

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
