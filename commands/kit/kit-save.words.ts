// What is said of a name that was saved.

import type { WordsOf } from '../../src/assistant/command.ts'
import { kindNames } from '../../src/assistant/kit/kit.words.ts'
import { inWhoseKit, whoseChanged } from './kit-owner.words.ts'
import type { kitSave } from './kit-save.ts'

export const kitSaveWords: WordsOf<typeof kitSave> = locale => {
  const { say, own } = locale
  return {
    summary: say`Saves a pack, charger or source by name, for you or for the club.`,
    tells: [own('save wren as 3S 720 LiHV')],
    takes: {
      name: { about: say`the name, as you would say it` },
      pack: { about: say`the pack that the name stands for` },
      charger: { about: say`or the charger` },
      source: { about: say`or the source` },
      note: { about: say`a danger of the pack that holds for everybody; ${own('none')} takes it off` },
      for: whoseChanged(locale),
    },
    answer: ({ entry: { owner, name, notation, note }, before }) => [
      say`Saved: ${own(name)} stands for ${own(notation)} ${inWhoseKit(owner, locale)}.`,
      before === undefined ? undefined : say`Before, it stood for ${own(before)}.`,
      note && say`Noted of it: ${own(note)}. To take that off: ${own('note: none')}`,
    ],
    figures: {},
    working: ({ entry: { kind, name } }) => [
      say`Write the name wherever you would write the ${kindNames(locale)[kind]}: "${own(`${kind}: ${name}`)}".`,
    ],
  }
}
