// What is said of charges that cannot be noted, and of packs without a log.

import { kindNames } from '../../src/assistant/kit/kit.words.ts'
import type { Level } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { ReadingFault } from '../../src/charging/upkeep/cell-spread.ts'
import { told } from '../../src/ground/locale.ts'
import { Problem } from '../../src/ground/problem.ts'
import { capacityKind, durationKind, packKind, targetKind } from '../../src/language/kinds/values.ts'
import type { NotedCharge } from '../../src/memory/charge-log.ts'
import type { KitKind } from '../../src/memory/kit.ts'
import { dayWords } from './log.words.ts'

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

export const takesBack = told((locale, { at, charge_Ah, name }: NotedCharge) => {
  const { say, show, own } = locale
  return say`Take back the charge of ${dayWords(at, locale)} that put ${show.capacity(charge_Ah)} into ${own(name)}?`
})

export const onlyModeratorsUndo = (name: string): Problem =>
  new Problem({
    final: true,
    what: ({ say }) => say`Only moderators take back charges of the club's packs.`,
    token: name,
    expected: ({ say }) => say`a pack of your own, or ask a moderator`,
    example: 'kit list',
  })

export const noClock = new Problem({
  final: true,
  what: ({ say }) => say`I know no clock here, so I cannot note when this was.`,
  expected: ({ say }) => say`a chat where I know the time`,
  example: 'kit list',
})

export const slipOfPen = (put_Ah: number, most_Ah: number, pack: Pack): Problem =>
  new Problem({
    what: ({ say, show }) =>
      say`More than ${show.capacity(most_Ah)} does not go into a sound pack of ${show.capacity(pack.capacity_Ah)}. If the charger did count that, do not charge the pack again before you know why.`,
    token: capacityKind.write(put_Ah),
    expected: ({ say, show, own }) => say`at most ${show.capacity(most_Ah)} for ${own(packKind.write(pack))}`,
    example: `put-back: ${capacityKind.write(pack.capacity_Ah)}`,
    verdict: 'do not charge',
  })

/** More charge than such a current gives in such a time; `most_Ah` is what it does. */
export const notInThatTime = (put_Ah: number, most_Ah: number): Problem =>
  new Problem({
    what: ({ say, show }) => say`That current gives no more than ${show.capacity(most_Ah)} in that time.`,
    token: capacityKind.write(put_Ah),
    expected: ({ say, show }) => say`at most ${show.capacity(most_Ah)}, or the current and the time that gave it`,
    example: 'put-back: 610mAh took: 62min current: 0.72A',
  })

export const cutoffAfterEnd = (cutoff_s: number, took_s: number): Problem =>
  new Problem({
    what: ({ say }) => say`The current begins to fall before the charge ends, not after it.`,
    token: durationKind.write(cutoff_s),
    expected: ({ say, show }) => say`at most ${show.duration(took_s)}`,
    example: 'took: 62min to-cutoff: 47min',
  })

export const endsBelowStart = (to: Level): Problem =>
  new Problem({
    what: ({ say }) => say`A charge does not end below where it began.`,
    token: targetKind.write(to),
    expected: ({ say }) => say`an end above the start`,
    example: 'from: 3.70V to: 4.35V',
  })

export const notFromFull = (to: Level): Problem =>
  new Problem({
    what: ({ say }) => say`Only a charge to full puts back what was counted in a flight from full.`,
    token: targetKind.write(to),
    expected: ({ say, own }) => say`${own('to: full')}, or no "${own('counted')}"`,
    example: 'log charge name: wren put-back: 610mAh counted: 560mAh',
  })

export const valuesForCells = (option: 'cells' | 'resistance', given: number, { series }: Pack): Problem =>
  new Problem({
    what: ({ say, show }) => say`There are ${show.number(given, 0)} values for ${show.number(series, 0)} cells.`,
    token: option,
    expected: ({ say, show }) =>
      option === 'cells'
        ? say`${show.number(series, 0)} values`
        : say`${show.number(series, 0)} values, or one for all`,
    example: option === 'cells' ? 'cells: 4.35 4.34 4.35' : 'resistance: 12mΩ',
  })

/** Readings at the end of a charge that are none of the cells of this pack. */
export function notOfItsCells(fault: ReadingFault, pack: Pack): Problem {
  if (fault.kind === 'count') return valuesForCells('cells', fault.readings, pack)
  return new Problem({
    what: ({ say, show }) =>
      say`No cell reads ${show.perCell(fault.cell_V)}: the balance lead does not connect at cell ${show.number(fault.cell + 1, 0)}. Do not charge the pack again before it does.`,
    token: 'cells',
    expected: ({ say, show }) => say`readings of ${show.number(pack.series, 0)} cells, one each`,
    example: 'cells: 4.35 4.34 4.35',
    verdict: 'do not charge',
  })
}

export const noDays = new Problem({
  what: ({ say }) => say`Each row begins with its day.`,
  expected: ({ say }) => say`a line of names, then rows; days as year-month-day or day.month.year`,
  example: 'rows: day;from V;put back mAh;took min 2031-05-03;3.62;640;58',
})

export const noPutBack = new Problem({
  what: ({ say }) => say`I see no column of what was put back.`,
  expected: ({ say }) => say`a column "put back mAh"`,
  example: 'rows: day;from V;put back mAh;took min 2031-05-03;3.62;640;58',
})

export const yetToCome = new Problem({
  what: ({ say }) => say`That day is yet to come.`,
  expected: ({ say }) => say`the day of a charge that was made`,
  example: 'rows: day;from V;put back mAh;took min 2031-05-03;3.62;640;58',
})
