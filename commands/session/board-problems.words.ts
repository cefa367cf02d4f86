// What is wrong with a question about a board.

import { Problem } from '../../src/ground/problem.ts'

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
