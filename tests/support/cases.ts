// How many cases a property test runs: fifty times as many in the long tier.

const longTier = process.env.LONG === '1'

export const cases = (count: number) => ({ numRuns: longTier ? count * 50 : count })
