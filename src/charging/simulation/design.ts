// A fixed set of points that fill a cube evenly, each coordinate as a standard normal number: the same at each start.

/** One draw of everything that is not known of a cell and its charger; mean 0, spread 1 each. */
export type Draw = readonly number[]

/** So many: the ends of a band lie still to a fiftieth of its width, and a charge costs 5 µs each. */
export const drawCount = 64
const dimensions = 12

/** Root of x^(dimensions + 1) = x + 1: its powers go round the unit interval as evenly as can be in all dimensions. */
function generator(): number {
  let root = 2
  for (let round = 0; round < 50; round++) root = (1 + root) ** (1 / (dimensions + 1))
  return root
}

/** Coordinates between 0 and 1. */
const places: readonly (readonly number[])[] = (() => {
  const root = generator()
  const steps = Array.from({ length: dimensions }, (_, index) => root ** -(index + 1))
  return Array.from({ length: drawCount }, (_, draw) => steps.map(step => (0.5 + (draw + 1) * step) % 1))
})()

/**
 * In each coordinate the draws are put at the middles of equal shares, in the order of their places: so each unknown by
 * itself is spread exactly.
 */
export const draws: readonly Draw[] = (() => {
  const ranks = Array.from({ length: dimensions }, (_, index) => {
    const order = places.map((place, draw) => ({ at: place[index] as number, draw })).sort((a, b) => a.at - b.at)
    const rank: number[] = []
    for (const [position, { draw }] of order.entries()) rank[draw] = position
    return rank
  })
  return places.map((_, draw) => ranks.map(rank => normalAt(((rank[draw] as number) + 0.5) / drawCount)))
})()

/** The same as shares of all that lie below. */
export const drawnShares: readonly Draw[] = draws.map(draw => draw.map(shareBelow))

/** The standard normal number that a share of all lie below: by halving of the logistic-like curve of Bowling et al. 2009. */
function normalAt(share: number): number {
  let low = -6
  let high = 6
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2
    if (shareBelow(middle) < share) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** Share of a standard normal number below `z`, within 0.0002. */
export function shareBelow(z: number): number {
  return 1 / (1 + Math.exp(-(0.07056 * z ** 3 + 1.5976 * z)))
}
