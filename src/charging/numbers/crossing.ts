// Where a smooth function comes to zero.

/**
 * The least value between the two at which rising `of` is not below 0, or at most `tolerance` above it; 0 must lie between
 * what it is at both. By false position, where an end that stays counts half each time (the Illinois method).
 */
export function crossing(low: number, high: number, tolerance: number, of: (value: number) => number): number {
  let [under, over] = [low, high]
  let [below, above] = [of(low), of(high)]
  let last = 0
  while (over - under > tolerance) {
    const straight = over - (above * (over - under)) / (above - below)
    const value = Math.min(Math.max(straight, under + tolerance / 2), over - tolerance / 2)
    const found = of(value)
    if (found < 0) {
      under = value
      below = found
      if (last < 0) above /= 2
    } else {
      over = value
      above = found
      if (last > 0) below /= 2
    }
    last = found < 0 ? -1 : 1
  }
  return over
}
