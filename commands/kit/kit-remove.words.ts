// What is said of a name that was removed.

import type { WordsOf } from '../../src/assistant/command.ts'
import { undoLine } from '../shared/undo.words.ts'
import { inWhoseKit, noSuchEntry, whereNamesAre, whoseChanged } from './kit-owner.words.ts'
import type { kitRemove } from './kit-remove.ts'

export const kitRemoveWords: WordsOf<typeof kitRemove> = locale => {
  const { say, own } = locale
  return {
    summary: say`Removes a saved pack, charger or source.`,
    tells: [own('remove wren from my kit')],
    takes: { name: { about: say`its name` }, for: whoseChanged(locale) },
    answer: ({ owner, removed }, { name }) => [
      removed
        ? say`Removed: ${own(name)} is no longer ${inWhoseKit(owner, locale)}. It stood for ${own(removed.notation)}.`
        : noSuchEntry(name, owner, locale),
    ],
    figures: {},
    working: ({ owner, removed }) => {
      if (!removed) return whereNamesAre(owner, locale)
      const charges = removed.kind === 'pack' ? say`Charges that were noted of it went with it.` : undefined
      return [charges, undoLine(locale)]
    },
  }
}
