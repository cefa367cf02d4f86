// What is said where a charge cannot be noted or taken back as it was asked.

import { kindNames } from '../../src/assistant/kit/kit-names.words.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { KitKind } from '../../src/memory/memory.ts'

/** `kind` is what is saved by that name. */
export const noLogOf = (name: string, kind: KitKind | undefined): Problem =>
  new Problem({
    what: locale => {
      const { say, own } = locale
      return kind
        ? say`"${own(name)}" is saved as a ${kindNames(locale)[kind]}; a log is kept of packs.`
        : say`There is no pack saved as "${own(name)}", and a log is kept by name.`
    },
    token: name,
    expected: ({ say, own }) => say`the name of a saved pack; "${own('kit list')}" shows them`,
    example: `kit save name: ${kind ? 'wren' : name} pack: 3S 720 LiHV`,
  })

export const onlyModeratorsUndo = (name: string): Problem =>
  new Problem({
    what: ({ say }) => say`Only moderators take back charges of the club's packs.`,
    token: name,
    expected: ({ say }) => say`a pack of your own, or ask a moderator`,
    example: 'log show name: wren',
  })
