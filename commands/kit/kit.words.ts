// What is said of the names that are saved.

import type { WordsOf } from '../../src/assistant/command.ts'
import { kindNames } from '../../src/assistant/kit/kit.words.ts'
import { joined } from '../../src/ground/text.ts'
import { undoLine } from '../shared/undo.words.ts'
import type { kitList, kitRemove, kitRename, kitSave } from './kit.ts'
import { inWhoseKit, noSuchEntry, whereNamesAre, whoseChanged, whoseSeen } from './kit-problems.words.ts'

export const kitSaveWords: WordsOf<typeof kitSave> = locale => {
  const { say, own } = locale
  return {
    summary: say`Saves a pack, charger or source by name, for you or for the club.`,
    tells: [own('save wren as 3S 720 LiHV')],
    takes: {
      name: { about: say`the name, as you would say it`, as: text => text },
      pack: { about: say`the pack that the name stands for`, as: text => text },
      charger: { about: say`or the charger`, as: text => text },
      source: { about: say`or the source`, as: text => text },
      note: { about: say`a danger of the pack that holds for everybody; ${own('none')} takes it off` },
      for: whoseChanged(locale),
    },
    answer: ({ entry: { owner, name, notation, note }, before }) => [
      say`Saved: ${own(name)} stands for ${own(notation)} ${inWhoseKit(owner, locale)}.`,
      before === undefined ? undefined : say`Before, it stood for ${own(before)}.`,
      note && say`Noted of it: ${own(note)}. To take that off: ${own('note: none')}`,
    ],
    working: ({ entry: { kind, name } }) => [
      say`Write the name wherever you would write the ${kindNames(locale)[kind]}: "${own(`${kind}: ${name}`)}".`,
    ],
  }
}

export const kitListWords: WordsOf<typeof kitList> = locale => {
  const { say, show, own } = locale
  const kinds = kindNames(locale)
  const yours = { me: say`yours`, club: say`the club's` }
  const titles = { me: say`Yours`, club: say`The club's` }
  return {
    summary: say`Shows the packs, chargers and sources saved by name.`,
    asks: [own('what have I saved'), own('list my packs')],
    takes: {
      starts: { about: say`only names that start so`, as: text => say`names that start with "${text}"` },
      for: whoseSeen(locale),
    },
    answer: ({ kits, total }) => {
      const counts = kits.map(({ whose, count }) => say`${yours[whose]} ${show.number(count, 0)}`)
      return [
        total > 0
          ? say`Saved by name: ${joined(counts, ', ')}.`
          : say`Nothing is saved by name yet. Save a pack with: ${own('kit save name: wren pack: 3S 720 LiHV')}`,
      ]
    },
    figures: { savedNames: say`saved names` },
    working: ({ kits }) =>
      kits.flatMap(({ whose, entries, more }) => [
        ...entries.map(({ name, kind, notation, note }) =>
          joined(
            [say`${titles[whose]}: ${own(name)}, ${kinds[kind]} ${own(notation)}`, note && say`noted: ${own(note)}`],
            ', ',
          ),
        ),
        more
          ? say`${titles[whose]}: there are more. Say how the name starts: ${own('kit list starts: wr')}`
          : undefined,
      ]),
  }
}

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
    working: ({ owner, outcome }) => (outcome === 'missing' ? whereNamesAre(owner, locale) : []),
  }
}

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
    working: ({ owner, removed }) => {
      if (!removed) return whereNamesAre(owner, locale)
      const charges = removed.kind === 'pack' ? say`Charges that were noted of it went with it.` : undefined
      return [charges, undoLine(locale)]
    },
  }
}
