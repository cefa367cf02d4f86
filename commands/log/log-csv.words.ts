// What is said of rows that were read in or handed out.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { followUp } from '../shared/next.ts'
import { beforeKind } from './before-kind.ts'
import { dayWords } from './log.words.ts'
import type { logExport, logImport } from './log-csv.ts'
import type { ReadRow } from './log-rows.ts'

const countWords = (count: number, { say, show }: Locale): Text =>
  count === 1 ? say`1 charge` : say`${show.number(count, 0)} charges`

export const logImportWords: WordsOf<typeof logImport> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Notes the charges of a saved pack from rows of a spreadsheet, once you have looked at them.`,
    takes: {
      name: { about: say`the name of the saved pack` },
      save: { about: say`yes, when what was read is right` },
      rows: { about: say`a line of names, then rows that begin with their day; ; , or | between the values` },
    },
    answer: ({ fresh, rows, left, isSaved }, { name }) => [
      isSaved
        ? say`Noted: ${countWords(fresh.length, locale)} of ${own(name)}.`
        : fresh.length === 0
          ? say`There is nothing in it to note of ${own(name)}.`
          : say`I read ${countWords(fresh.length, locale)} of ${own(name)}. Nothing is noted yet: is it right?`,
      rows.length > fresh.length
        ? say`Noted before, and left as they are: ${countWords(rows.length - fresh.length, locale)}.`
        : undefined,
      left[0] && say`Left out: ${own(left[0].row)}. ${left[0].why.saidIn(locale).what}`,
    ],
    changed: ({ isSaved }, { name }) =>
      isSaved ? say`"${own(`log undo name: ${name}`)}" takes back the last one.` : say`Nothing is changed yet.`,
    figures: { charges: say`charges read`, leftOut: say`rows left out` },
    working: ({ fresh, left, ignored }) => [
      ...fresh.map(row => rowWords(row, locale)),
      ...left.slice(1).map(({ row, why }) => say`Left out: ${own(row)}. ${why.saidIn(locale).what}`),
      ignored.length > 0 ? say`Columns that tell nothing of a charge: ${joined(ignored.map(own), ', ')}.` : undefined,
    ],
    next: ({ isSaved, fresh }, asked) => [
      isSaved || fresh.length === 0
        ? followUp(say`Its log`, 'log show', { name: asked.name })
        : followUp(say`Note them`, 'log import', { name: asked.name, save: 'yes', rows: asked.rows }),
    ],
  }
  function rowWords({ at, asked }: ReadRow, { say: one }: Locale): Text {
    const { 'put-back': put_Ah, from, took, current } = asked
    const told = [
      one`${show.capacity(put_Ah)} put back`,
      from && one`from ${own(beforeKind.write(from))}`,
      took === undefined ? undefined : one`in ${show.duration(took)}`,
      current === undefined ? undefined : one`at ${show.current(current)}`,
    ]
    return one`${dayWords(at, locale)}: ${joined(told, ', ')}.`
  }
}

export const logExportWords: WordsOf<typeof logExport> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Hands out the log of a saved pack as rows for a spreadsheet.`,
    takes: { name: { about: say`the name of the saved pack` } },
    answer: ({ charges }, { name }) =>
      charges.length > 0
        ? [say`The log of ${own(name)}, ${show.number(charges.length, 0)} rows, is here as a file.`]
        : [say`No charge of ${own(name)} is noted yet.`],
    figures: { charges: say`charges noted` },
    next: (_, { name }) => [followUp(say`Its log`, 'log show', { name })],
  }
}
