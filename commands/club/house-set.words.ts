// What is said of rules of the club that were changed.

import type { WordsOf } from '../../src/assistant/command.ts'
import { lifted, limits } from '../../src/assistant/naming/told-rules.ts'
import { liIon } from '../../src/charging/things/chemistries.ts'
import { asksAgain } from '../shared/next.ts'
import { undoLine } from '../shared/undo.words.ts'
import { changesWords } from './house.words.ts'
import { type houseSet, takes } from './house-set.ts'

export const houseSetWords: WordsOf<typeof houseSet> = locale => {
  const { say, show, own } = locale
  const { name, full_V, gentleFull_V = full_V } = liIon
  return {
    summary: say`Tightens the charging rules of this club; for moderators.`,
    tells: [own('limit LiPo to 1C in this club')],
    takes: {
      chemistry: { about: say`which cells rate, full, storage and floor are for` },
      rate: { about: say`highest charge rate, or none to lift the rule` },
      full: { about: say`highest voltage per cell of a charge, or none` },
      storage: { about: say`storage voltage per cell, or none` },
      floor: { about: say`voltage per cell at which a battery used as a source is stopped, or none` },
      coldest: { about: say`temperature of the cells below which nobody charges, or none` },
      gentle: { about: say`yes: ${own(name)} is charged to ${show.perCell(gentleFull_V.value)} a cell only` },
      decimal: { about: say`point or comma` },
      language: { about: say`English; no other so far` },
      'private-answers': { about: say`who may have an answer that only they see` },
    },
    answer: ({ changes, before, isSame }) =>
      isSame
        ? [
            changes.every(({ value }) => value === null)
              ? say`There is no such limit of this club.`
              : say`It is set so already: ${changesWords(changes, locale)}.`,
          ]
        : [say`Set for this club: ${changesWords(changes, locale)}.`, say`Before: ${changesWords(before, locale)}.`],
    figures: {},
    next: ({ isSame }, asked) => {
      const standing = limits.filter(limit => asked[limit] != null)
      const lifting = Object.fromEntries(standing.map(limit => [limit, lifted]))
      return isSame && standing.length > 0 ? [asksAgain(takes, asked)(say`Lift it`, 'house set', lifting)] : []
    },
    working: () => [
      undoLine(locale),
      say`"house show" shows them all. A rule only ever tightens what the chemistry and the label allow.`,
    ],
  }
}
