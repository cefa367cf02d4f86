// What is said of currents, packs and sums that tell too little, or nothing.

import { problemAt } from '../../src/ground/plain-text.ts'
import { Problem } from '../../src/ground/problem.ts'
import { currentKind } from '../../src/language/kinds/values.ts'
import { anyChemistry } from '../../src/language/parts/chemistry.ts'

export const tooLow = (asked_A: number, least_A: number, most_A: number): Problem =>
  problemAt(currentKind.write(asked_A), ({ say }) => say`This charger cannot be set that low.`, {
    expected: ({ say, show }) => say`${show.number(least_A, 2)} to ${show.current(most_A)}`,
    example: `current: ${currentKind.write(least_A)}`,
  })

export const endsFirst = (until_A: number, current_A: number): Problem =>
  problemAt(currentKind.write(until_A), ({ say }) => say`The charge would end before it has begun.`, {
    expected: ({ say, show }) => say`an end current below the charge current of ${show.current(current_A)}`,
    example: `until: ${currentKind.write(Number((current_A / 10).toPrecision(2)))}`,
  })

export const packWanted = (example: string): Problem =>
  new Problem({
    what: ({ say }) => say`I need the pack or its type: the same volts mean other charges.`,
    expected: ({ say, own }) =>
      say`pack: cells, mAh and type, or chemistry: ${own(anyChemistry)}, with the cells before it if you like (${own('3S LiPo')})`,
    example,
  })

export const onlyOne = (): Problem =>
  new Problem({
    what: ({ say }) => say`That is one pack; I need two or more to compare.`,
    expected: ({ say }) => say`two or more packs with ";" between them`,
    example: 'compare packs: 3S 720 LiHV 45g; 3S 850 LiPo 68g',
  })

export const sumMissing = (): Problem =>
  new Problem({
    what: ({ say }) => say`I need a pack, or volts with one of mAh, Wh, amps or watts.`,
    expected: ({ say }) => say`a pack for its watt-hours, or two quantities that give a third`,
    example: 'energy capacity: 2200mAh voltage: 11.1V',
  })

export const capacityForShare = (): Problem =>
  new Problem({
    what: ({ say }) => say`What share of the pack that is hangs on the capacity on its label.`,
    expected: ({ say }) => say`the pack with its capacity`,
    example: 'percent pack: 3S 720 LiHV back: 560mAh',
  })

/** Packs of several cell counts, of which nothing else could be read. */
export function mixedCounts(counts: readonly string[]): Problem {
  const told = counts.join(' and ')
  return new Problem({
    what: ({ say, own }) =>
      say`No: never put ${own(told)} on one board. The packs with more cells would force a huge current into the others, and they may burn.`,
    token: told,
    expected: ({ say }) =>
      say`packs of one cell count, one type and nearly the same volts; charge the others by themselves`,
    example: 'parallel packs: 2x 3S 720 LiHV at 3.78V per cell',
    verdict: 'do not charge',
  })
}
