// Sums of the trade: which third quantity follows from two that were told, and what a flight takes of a pack.

import type { Level } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { mostUsed } from '../../src/charging/upkeep/flight-meter.ts'

/** In SI units but for Ah and Wh. */
export interface Known {
  readonly voltage_V?: number | undefined
  readonly capacity_Ah?: number | undefined
  readonly energy_Wh?: number | undefined
  readonly current_A?: number | undefined
  readonly power_W?: number | undefined
  readonly duration_s?: number | undefined
  readonly resistance_ohm?: number | undefined
}

type Quantity = keyof Known

/** Two quantities by their names, and what follows from them. */
const rules = {
  energy: ['voltage_V', 'capacity_Ah', (volts, ah) => ({ energy_Wh: volts * ah })],
  capacity: ['voltage_V', 'energy_Wh', (volts, wh) => ({ capacity_Ah: wh / volts })],
  sag: ['resistance_ohm', 'current_A', (ohm, amps) => ({ voltage_V: ohm * amps, power_W: ohm * amps ** 2 })],
  moved: ['current_A', 'duration_s', (amps, s) => ({ capacity_Ah: (amps * s) / 3600 })],
  lasts: ['capacity_Ah', 'current_A', (ah, amps) => ({ duration_s: (ah / amps) * 3600 })],
  drawn: ['capacity_Ah', 'duration_s', (ah, s) => ({ current_A: (ah / s) * 3600 })],
  runs: ['energy_Wh', 'power_W', (wh, watts) => ({ duration_s: (wh / watts) * 3600 })],
  work: ['power_W', 'duration_s', (watts, s) => ({ energy_Wh: (watts * s) / 3600 })],
  power: ['voltage_V', 'current_A', (volts, amps) => ({ power_W: volts * amps })],
  current: ['voltage_V', 'power_W', (volts, watts) => ({ current_A: watts / volts })],
} as const satisfies Record<string, readonly [Quantity, Quantity, (one: number, other: number) => Known]>

export type SumName = keyof typeof rules
type Sum = Known & { readonly kind: SumName }

/** The first sum that has both of its quantities; undefined where none has. */
export function sumFrom(known: Known): Sum | undefined {
  for (const [kind, [one, other, follow]] of Object.entries(rules)) {
    const [first, second] = [known[one], known[other]]
    if (first && second) return { kind: kind as SumName, ...known, ...follow(first, second) }
  }
  return undefined
}

interface AskedFlight {
  readonly count?: number | undefined
  /** Used in the air. */
  readonly capacity?: number | undefined
  readonly current?: number | undefined
  readonly power?: number | undefined
  readonly duration?: number | undefined
  readonly from?: Level | undefined
  readonly to?: Level | undefined
}

/** A flight of so long, or amps or watts with a pack: more than it is charged with is what it gives in the air. */
export function flightOn(pack: Pack, asked: AskedFlight, socAt: (level: Level) => number) {
  const { count = 1, capacity, current, power, duration } = asked
  const { chemistry, series, capacity_Ah } = pack
  const nominal_V = chemistry.nominal_V.value * series
  const { start, left, used } = spanOf(asked, socAt)
  const told_A = current ?? (power && power / nominal_V / count)
  const isLevelled = asked.from !== undefined || asked.to !== undefined
  const used_Ah = capacity ?? (told_A === undefined ? (isLevelled ? used * capacity_Ah : undefined) : 0)
  if (duration !== undefined && used_Ah !== undefined) {
    const current_A = told_A ?? (used_Ah / duration) * 3600
    const rate_C = current_A / capacity_Ah
    return {
      kind: 'flown',
      current_A,
      power_W: current_A * nominal_V,
      rate_C,
      capacity_Ah: used_Ah || (current_A * duration) / 3600,
      flown_s: duration,
      duration_s: (start - left) * (3600 / rate_C),
      leftSoc: left,
    }
  }
  if (told_A === undefined) return undefined
  const rate_C = told_A / capacity_Ah
  const isFlown = power !== undefined || rate_C > chemistry.highestRate_C.value
  return {
    kind: isFlown ? 'flight' : 'rate',
    current_A: told_A,
    power_W: power ?? told_A * chemistry.full_V.value * series * count,
    rate_C,
    /** How long that may go on, and what stays in the pack then, 0 to 1. */
    duration_s: (start - left) * (3600 / rate_C),
    leftSoc: left,
  }
}

export type Flight = NonNullable<ReturnType<typeof flightOn>>

/** Of one level alone more than half is what may be used, less is what stays; told as a start it is one. Of two that rise both are used. */
function spanOf({ from, to }: AskedFlight, socAt: (level: Level) => number) {
  const [first, last] = [from && socAt(from), to && socAt(to)]
  const usual = 1 - mostUsed.value
  if (first !== undefined && last !== undefined)
    return first > last ? { start: first, left: last, used: first - last } : { start: 1, left: 1 - last, used: first }
  const left = last ?? (first !== undefined && first <= 0.5 ? first : usual)
  const stays = to?.kind === 'soc' && left > 0.5 ? 1 - left : left
  const start = first !== undefined && first > 0.5 ? first : 1
  return { start, left: stays, used: start - stays }
}
