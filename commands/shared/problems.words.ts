// What is said of currents, packs and sums that tell too little, or nothing.

import { type Said, told } from '../../src/ground/locale.ts'
import { Problem } from '../../src/ground/problem.ts'
import { anyChemistry } from '../../src/language/things/chemistry.ts'

export const tooLow: Said = ({ say }) => say`This charger cannot be set that low.`

export const stepsBetween = told(
  ({ say, show }, least_A: number, most_A: number) => say`${show.number(least_A, 2)} to ${show.current(most_A)}`,
)

export const endsFirst: Said = ({ say }) => say`The charge would end before it has begun.`

export const endBelow = told(
  ({ say, show }, current_A: number) => say`an end current below the charge current of ${show.current(current_A)}`,
)

export const packWanted: Said = ({ say }) => say`I need the pack or its chemistry: the same volts mean other charges.`
export const packOrItsKind: Said = ({ say, own }) =>
  say`pack: cells, mAh and type, or chemistry: ${own(anyChemistry)}, with the cells before it if you like (${own('3S LiPo')})`

export const onlyOne: Said = ({ say }) => say`That is one pack; I need two or more to compare.`
export const twoOrMore: Said = ({ say }) => say`two or more packs with ";" between them`

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
      say`packs of one cell count, one chemistry and nearly the same volts; charge the others by themselves`,
    example: 'parallel packs: 2x 3S 720 LiHV at 3.78V per cell',
    verdict: 'do not charge',
  })
}
