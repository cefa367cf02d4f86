// Times of a repeated piece of work, and what stands at a percentile of them.

/** Milliseconds of each of `rounds` runs, after a tenth as many that are not counted. */
export async function timesOf(rounds: number, work: (round: number) => unknown): Promise<number[]> {
  const times: number[] = []
  for (let round = -Math.ceil(rounds / 10); round < rounds; round++) {
    const start = performance.now()
    await work(Math.abs(round))
    if (round >= 0) times.push(performance.now() - start)
  }
  return times
}

export function percentile(times: readonly number[], percent: number): number {
  const sorted = times.toSorted((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor((percent / 100) * sorted.length))] ?? Number.NaN
}
