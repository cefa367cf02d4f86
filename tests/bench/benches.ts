// The benches by name, and what each gives back. Ratios tell more than times: times are one machine's.

export interface Row {
  readonly name: string
  /** The figure with its unit. */
  readonly value: string
  /** Beside what it was measured, and how many times as much. */
  readonly ratio?: string
}

interface Bench {
  default(): Promise<Row[]>
}

export const benches: Record<string, () => Promise<Bench>> = {
  core: () => import('./core.ts'),
  charts: () => import('./charts.ts'),
  discord: () => import('./discord.ts'),
  http: () => import('./http.ts'),
  loop: () => import('./loop.ts'),
  notation: () => import('./notation.ts'),
  matrix: () => import('./matrix.ts'),
  memory: () => import('./memory.ts'),
  plan: () => import('./plan.ts'),
  host: () => import('./host.ts'),
  start: () => import('./start.ts'),
}
