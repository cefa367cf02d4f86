// When a pack will hold too little, at the pace at which its noted charges have lost capacity.

/** What a pack held on a day. */
export interface HeldOn {
  readonly at: Date
  readonly capacity_Ah: number
}

const day_ms = 86_400_000
/** Fewer or nearer readings say more of their own errors than of age. */
const leastReadings = 4
const leastSpan_days = 30
const leastApart_days = 7
/** Nobody's log tells further ahead. */
const furthest_days = 5 * 365

/**
 * The likely day, and between which of the middle half of all paces it lies; without a latest one where that is more than
 * five years ahead. The middle of the paces between all pairs of readings (Theil and Sen) carried on from the middle of the last three;
 * undefined where the log is too short, loses nothing, or is there already.
 */
export function fadeTo(held: readonly HeldOn[], floor_Ah: number) {
  const last = held.at(-1)
  if (!last || held.length < leastReadings || daysBetween(held[0] as HeldOn, last) < leastSpan_days) return undefined
  const paces = held
    .flatMap((one, index) => held.slice(index + 1).map(other => [one, other] as const))
    .filter(([one, other]) => daysBetween(one, other) >= leastApart_days)
    .map(([one, other]) => (one.capacity_Ah - other.capacity_Ah) / daysBetween(one, other))
    .toSorted((a, b) => a - b)
  const now_Ah = held
    .slice(-3)
    .map(one => one.capacity_Ah)
    .toSorted((a, b) => a - b)[1] as number
  if (now_Ah <= floor_Ah) return undefined
  const dayAt = (share: number): Date | undefined => {
    const ahead_days = (now_Ah - floor_Ah) / Math.max(0, paces[Math.floor(share * (paces.length - 1))] as number)
    return ahead_days <= furthest_days ? new Date(last.at.getTime() + ahead_days * day_ms) : undefined
  }
  const at = dayAt(0.5)
  return at && { at, earliest: dayAt(0.75) ?? at, latest: dayAt(0.25) }
}

export type Fade = NonNullable<ReturnType<typeof fadeTo>>

const daysBetween = (one: HeldOn, other: HeldOn): number => (other.at.getTime() - one.at.getTime()) / day_ms
