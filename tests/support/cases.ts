// How many of the cases that a property test names are run: a tenth by `npm test`, each by `.ci/run`, fifty times as
// many by `npm run test:long`. However few those are, some are.

const share = Number(process.env.CASES ?? 0.1)
const least = 20

/** Of things that are to be met in all cases, how many at least in those that are run. */
export const partOf = (count: number): number => count * share

/** Of `count` things that a test would try, how many it tries this time. */
export const someOf = (count: number): number => Math.max(Math.min(count, least), Math.round(count * share))

export const cases = (count: number) => ({ numRuns: someOf(count) })

/** Of things that are all tried one after the other, whether it is this one's turn: spread so that each of a row has some. */
export function turns(): () => boolean {
  const golden = (Math.sqrt(5) - 1) / 2
  let seen = 0
  return () => (seen++ * golden) % 1 < share
}
