// What is said of a name that was changed.

import type { WordsOf } from '../../src/assistant/command.ts'
import { inWhoseKit, noSuchEntry, whereNamesAre, whoseChanged } from './kit-owner.words.ts'
import type { kitRename } from './kit-rename.ts'

export const kitRenameWords: WordsOf<typeof kitRename> = locale => {
  const { say, own } = locale
  return {
    summary: say`Gives a saved pack, charger or source another name.`,
    tells: [own('rename wren to robin')],
    takes: { name: { about: say`the name it has` }, to: { about: say`the name it gets` }, for: whoseChanged(locale) },
    answer: ({ owner, outcome }, { name, to }) => [
      outcome === 'missing'
        ? noSuchEntry(name, owner, locale)
        : say`Renamed: ${own(name)} is now ${own(to)} ${inWhoseKit(owner, locale)}.`,
    ],
    figures: {},
    working: ({ owner, outcome }) => (outcome === 'missing' ? whereNamesAre(owner, locale) : []),
  }
}
