// What is said of the names that are saved.

import type { WordsOf } from '../../src/assistant/command.ts'
import { kindNames } from '../../src/assistant/kit/kit.words.ts'
import { joined } from '../../src/ground/text.ts'
import type { kitList } from './kit-list.ts'
import { whoseSeen } from './kit-owner.words.ts'

export const kitListWords: WordsOf<typeof kitList> = locale => {
  const { say, show, own } = locale
  const kinds = kindNames(locale)
  const yours = { me: say`yours`, club: say`the club's` }
  const titles = { me: say`Yours`, club: say`The club's` }
  return {
    summary: say`Shows the packs, chargers and sources saved by name.`,
    asks: [own('what have I saved')],
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
