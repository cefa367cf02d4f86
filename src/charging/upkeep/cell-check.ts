// What measured cell voltages say about a pack: fit, out of balance, weak, wrongly labelled or wrongly measured.

import { chemistries } from '../things/chemistries.ts'
import type { Chemistry, Cited } from '../things/chemistry.ts'
import { restingVoltage, socAt } from '../things/curve.ts'
import type { Pack } from '../things/pack.ts'

export interface CellReadings {
  readonly pack: Pack
  /** In the order of the balance plug, in V. */
  readonly cells_V: readonly number[]
  readonly at: 'rest' | 'full'
  /** Current that the balancer bleeds from one cell, in A. */
  readonly balance_A: number
}

export type CellFinding =
  /** Another number of readings than cells on the label. */
  | { readonly kind: 'count'; readonly readings: number; readonly series: number }
  /** A reading near nothing, or about twice the others: a wire of the balance lead does not connect. */
  | { readonly kind: 'lead'; readonly cell: number }
  | { readonly kind: 'damaged'; readonly cell: number; readonly damage_V: number }
  /** All cells stand above what the label's chemistry can; `looksLike` is one that could. */
  | { readonly kind: 'chemistry'; readonly full_V: number; readonly looksLike?: Chemistry }
  | { readonly kind: 'overcharged'; readonly cell: number; readonly full_V: number }
  /** All stand where cells of `like`, of a flat curve, rest and those of the label are near empty. */
  | { readonly kind: 'other or empty'; readonly like: Chemistry }
  /** At the end of a charge, but well below full. */
  | { readonly kind: 'not full'; readonly full_V: number }
  | { readonly kind: 'low'; readonly cell: number; readonly floor_V: number }
  | { readonly kind: 'spread'; readonly judged: 'balanced' | 'balance first' | 'weak cell' | 'do not charge' }

export interface CellCheck {
  readonly verdict: 'go' | 'go with care' | 'do not charge'
  /** Most pressing first; never empty. */
  readonly findings: readonly [CellFinding, ...CellFinding[]]
  readonly spread_V: number
  /** Indices, from 0. */
  readonly lowest: number
  readonly highest: number
  /** Bleeding every cell down to the lowest, in s: at least, as balancers pause to measure. */
  readonly balance_s: number
}

interface Spreads {
  readonly balanced_V: number
  readonly balance_V: number
  readonly weak_V: number
}

/** At rest; the end of a balanced charge is judged by half of them. */
export const spreads: Cited<Spreads> = {
  value: { balanced_V: 0.03, balance_V: 0.1, weak_V: 0.3 },
  standing: 'common practice',
  source:
    'cells within 0.03 V are balanced, to 0.10 V are balanced before the charge, beyond that one is weak, beyond 0.30 V the pack is not charged; half of that at the end of a charge',
}

/** Nobody measures a cell of a sound pack this low: nothing is connected there. */
const nothing_V = 0.5
/** Two cells in one reading: the wire between them is open. */
const doubled = 1.7
const meterError_V = 0.02
/** Resting cells of a flat curve (LiFe) lie this near to storage between a fifth and nine tenths of their charge. */
const flat_V = 0.06
/** Below the gentle full voltage too. */
const shortOfFull_V = 0.12

export function checkCells(readings: CellReadings): CellCheck {
  const { pack, cells_V } = readings
  const indices = [...cells_V.keys()]
  const volts = (index: number): number => cells_V[index] as number
  const lowest = indices.reduce((a, b) => (volts(b) < volts(a) ? b : a))
  const highest = indices.reduce((a, b) => (volts(b) > volts(a) ? b : a))
  const spread_V = Number((volts(highest) - volts(lowest)).toFixed(6))
  const findings = findingsIn(readings, lowest, highest, spread_V)
  const chemistry = pack.chemistry
  const gap = socAt(chemistry, volts(highest)) - socAt(chemistry, volts(lowest))
  return {
    verdict: findings.map(verdictOn).reduce((a, b) => (severity[b] > severity[a] ? b : a)),
    findings,
    spread_V,
    lowest,
    highest,
    balance_s: (gap * pack.capacity_Ah * 3600) / readings.balance_A,
  }
}

const severity = { go: 0, 'go with care': 1, 'do not charge': 2 } as const

function verdictOn(finding: CellFinding): CellCheck['verdict'] {
  if (finding.kind === 'low' || finding.kind === 'other or empty') return 'go with care'
  if (finding.kind === 'not full') return 'go'
  if (finding.kind !== 'spread') return 'do not charge'
  if (finding.judged === 'balanced') return 'go'
  return finding.judged === 'do not charge' ? 'do not charge' : 'go with care'
}

function findingsIn(
  { pack, cells_V, at }: CellReadings,
  lowest: number,
  highest: number,
  spread_V: number,
): [CellFinding, ...CellFinding[]] {
  const { damage_V, full_V, restFloor_V } = pack.chemistry
  const [low_V, high_V] = [cells_V[lowest] as number, cells_V[highest] as number]
  const most_V = full_V.value + meterError_V
  const open = openLead(cells_V, most_V)
  if (open !== undefined) return [{ kind: 'lead', cell: open }]
  const spread: CellFinding = { kind: 'spread', judged: judged(spread_V, at) }
  const found: CellFinding[] = []
  if (cells_V.length !== pack.series) {
    found.push({ kind: 'count', readings: cells_V.length, series: pack.series })
  }
  if (low_V < damage_V.value) found.push({ kind: 'damaged', cell: lowest, damage_V: damage_V.value })
  if (low_V > most_V) found.push({ kind: 'chemistry', full_V: full_V.value, ...looksLike(high_V) })
  else if (high_V > most_V) found.push({ kind: 'overcharged', cell: highest, full_V: full_V.value })
  if (low_V >= damage_V.value && low_V < restFloor_V.value) {
    found.push({ kind: 'low', cell: lowest, floor_V: restFloor_V.value })
  }
  const like = flatChemistryAt(low_V, high_V)
  if (like && like !== pack.chemistry && low_V >= damage_V.value && high_V <= most_V) {
    found.push({ kind: 'other or empty', like })
  }
  if (at === 'full' && high_V < full_V.value - shortOfFull_V)
    found.push({ kind: 'not full', full_V: full_V.value })
  const [first, ...rest] = found
  return first ? [first, ...rest, spread] : [spread]
}

/** The first reading that no cell has: near nothing, or two cells in one. */
function openLead(cells_V: readonly number[], most_V: number): number | undefined {
  const sorted = [...cells_V].sort((a, b) => a - b)
  const middle_V = sorted[Math.floor((sorted.length - 1) / 2)] as number
  const isOpen = (cell_V: number) => cell_V < nothing_V || (cell_V > most_V && cell_V > doubled * middle_V)
  const index = cells_V.findIndex(isOpen)
  return index < 0 ? undefined : index
}

/** The chemistry of a flat curve whose cells rest near these volts between a fifth and nine tenths of their charge. */
function flatChemistryAt(low_V: number, high_V: number): Chemistry | undefined {
  return chemistries.find(chemistry => {
    const storage_V = chemistry.storage_V.value
    const isFlat = restingVoltage(chemistry, 0.9) - restingVoltage(chemistry, 0.2) < 2 * flat_V
    return isFlat && Math.abs(low_V - storage_V) < flat_V && Math.abs(high_V - storage_V) < flat_V
  })
}

function looksLike(cell_V: number): { looksLike?: Chemistry } {
  const fitting = chemistries.find(
    ({ restFloor_V, full_V }) => cell_V >= restFloor_V.value && cell_V <= full_V.value + meterError_V,
  )
  return fitting ? { looksLike: fitting } : {}
}

function judged(
  spread_V: number,
  at: CellReadings['at'],
): Extract<CellFinding, { kind: 'spread' }>['judged'] {
  const { balanced_V, balance_V, weak_V } = spreads.value
  const share = at === 'full' ? 0.5 : 1
  if (spread_V <= balanced_V * share + 1e-9) return 'balanced'
  if (spread_V <= balance_V * share + 1e-9) return 'balance first'
  return spread_V <= weak_V * share + 1e-9 ? 'weak cell' : 'do not charge'
}
