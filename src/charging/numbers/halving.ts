// Where something begins to hold, by halving.

/** The least value between the two from which `holds`, where it stays true above; `high` where it holds nowhere below. */
export function firstWhere(low: number, high: number, halvings: number, holds: (value: number) => boolean): number {
  let [under, over] = [low, high]
  for (let halving = 0; halving < halvings; halving++) {
    const middle = (under + over) / 2
    if (holds(middle)) over = middle
    else under = middle
  }
  return over
}
