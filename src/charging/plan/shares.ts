// Which shares of a source's power are worth giving to one port.

/** Smaller shares than this hardly charge. */
const leastShare = 0.02

/**
 * All of it, equal parts, and what the other ports leave over at their highest draws; all of it only, where that is
 * enough for every port at once. In W, rising.
 */
export function sharesOf(power_W: number, demands_W: readonly number[], port: number): number[] {
  const others_W = demands_W.filter((demand_W, other) => other !== port && demand_W > 0)
  const own_W = demands_W[port] as number
  const all_W = others_W.reduce((sum, demand_W) => sum + demand_W, own_W)
  if (all_W <= power_W) return [power_W]
  const equal_W = others_W.map((_, index) => power_W / (index + 2))
  const leftover_W = [...others_W, all_W - own_W].map(other_W => power_W - other_W)
  return [...new Set([power_W, ...equal_W, ...leftover_W])]
    .filter(share_W => share_W >= power_W * leastShare)
    .sort((a, b) => a - b)
}
