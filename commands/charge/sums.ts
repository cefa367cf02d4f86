// Sums of the trade: which third quantity follows from two that were told.

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
export type Sum = Known & { readonly kind: SumName }

/** The first sum that has both of its quantities; undefined where none has. */
export function sumFrom(known: Known): Sum | undefined {
  for (const [kind, [one, other, follow]] of Object.entries(rules)) {
    const [first, second] = [known[one], known[other]]
    if (first && second) return { kind: kind as SumName, ...known, ...follow(first, second) }
  }
  return undefined
}
