// A good deal of packs to ports, without proof: the shortest first to whichever port has it ready first, then mended.

import { sumOf } from '../numbers/sum.ts'
import {
  type Deal,
  energiesOn,
  energyTolerance_Wh,
  type Hookups,
  isBetter,
  lasts_min,
  type Session,
  type Worth,
} from './model.ts'

/** For each port, how many packs of each kind it charges; the last entry holds those that nobody charges. */
type Hands = number[][]

/** What is given out first: the pack that is ready first, or the one that takes least energy. */
const preferences = ['soonest', 'thriftiest'] as const
type Preference = (typeof preferences)[number]

/** Deals the packs by each preference, then moves and swaps single packs as long as that makes the deal better. */
export const dealGreedily = (session: Session, hookups: Hookups): Deal =>
  dealBest(session, hookups, dealing => {
    while (dealing.mendOnce()) {}
  })

/** The first deals alone: quick enough to compare many hookups. */
export function dealRoughly(session: Session, hookups: Hookups): Deal {
  return dealBest(session, hookups, () => {})
}

function dealBest(session: Session, hookups: Hookups, mend: (dealing: Dealing) => void): Deal {
  const deals = preferences.map(preference => {
    const dealing = new Dealing(session, hookups)
    dealing.dealOut(preference)
    mend(dealing)
    return dealing.result()
  })
  return deals.reduce((a, b) => (isBetter(b, a) ? b : a))
}

class Dealing {
  readonly #session: Session
  readonly #hookups: Hookups
  readonly #energies: readonly (readonly number[])[]
  readonly #ranks: readonly (readonly number[])[]
  #hands: Hands
  #left_Wh: number[]
  #waits: number[]
  #ready = 0

  constructor(session: Session, hookups: Hookups) {
    this.#session = session
    this.#hookups = hookups
    this.#energies = energiesOn(session, hookups)
    this.#ranks = hookups.map((_, port) =>
      session.counts
        .map((_, kind) => kind)
        .filter(kind => Number.isFinite(this.#duration(port, kind)))
        .sort((a, b) => this.#duration(port, a) - this.#duration(port, b)),
    )
    this.#hands = [...hookups.map(() => session.counts.map(() => 0)), [...session.counts]]
    this.#left_Wh = session.sources.map(({ energy_Wh }) => energy_Wh)
    this.#waits = hookups.map(() => 0)
  }

  result(): Deal {
    return {
      ready: this.#ready,
      wait_min: this.#wait(),
      order: this.#ranks.map((rank, port) =>
        rank.flatMap(kind => Array<number>(this.#hand(port)[kind] as number).fill(kind)),
      ),
    }
  }

  /** Gives out one pack at a time: the preferred one, to the port where it is ready first. */
  dealOut(preference: Preference): void {
    const ends = this.#hookups.map(() => 0)
    while (this.#ready < this.#session.wanted) {
      const next = this.#next(ends, preference)
      if (!next) return
      ends[next.port] = next.end_min
      this.#move(next.kind, undefined, next.port)
    }
  }

  #next(ends: readonly number[], preference: Preference) {
    let best: { port: number; kind: number; end_min: number; energy_Wh: number } | undefined
    this.#session.counts.forEach((_, kind) => {
      if (this.#spare(kind) === 0) return
      ends.forEach((free_min, port) => {
        const end_min = free_min + this.#duration(port, kind)
        if (!Number.isFinite(end_min) || end_min > this.#session.deadline_min || !this.#fits(kind, port)) return
        const energy_Wh = this.#energy(this.#hookups[port]?.source as number, kind)
        const isThriftier = best && preference === 'thriftiest' ? Math.sign(best.energy_Wh - energy_Wh) : 0
        if (!best || isThriftier > 0 || (isThriftier === 0 && end_min < best.end_min)) {
          best = { port, kind, end_min, energy_Wh }
        }
      })
    })
    return best
  }

  /** Makes the first single move or swap that is better; false where there is none. */
  mendOnce(): boolean {
    const places = [...this.#hookups.keys(), undefined]
    for (const from of places) {
      for (const kind of this.#session.counts.keys()) {
        for (const to of places) {
          if (from === to || this.#hand(from)[kind] === 0) continue
          if (this.#tries(() => this.#move(kind, from, to))) return true
          for (const back of this.#session.counts.keys()) {
            if (back === kind || this.#hand(to)[back] === 0) continue
            const swap = () => {
              this.#move(kind, from, to)
              this.#move(back, to, from)
            }
            if (this.#tries(swap)) return true
          }
        }
      }
    }
    return false
  }

  /** Keeps the change where it is sound and better, else undoes it. */
  #tries(change: () => void): boolean {
    const before: Worth = { ready: this.#ready, wait_min: this.#wait() }
    const saved = {
      hands: this.#hands.map(hand => [...hand]),
      left_Wh: [...this.#left_Wh],
      waits: [...this.#waits],
      ready: this.#ready,
    }
    change()
    const sound =
      this.#ready <= this.#session.wanted &&
      Number.isFinite(this.#wait()) &&
      this.#left_Wh.every(left_Wh => left_Wh >= -energyTolerance_Wh)
    if (sound && isBetter({ ready: this.#ready, wait_min: this.#wait() }, before)) return true
    this.#hands = saved.hands
    this.#left_Wh = saved.left_Wh
    this.#waits = saved.waits
    this.#ready = saved.ready
    return false
  }

  /** `undefined` stands for the packs that nobody charges. */
  #move(kind: number, from: number | undefined, to: number | undefined): void {
    this.#put(kind, from, -1)
    this.#put(kind, to, 1)
  }

  #put(kind: number, port: number | undefined, packs: number): void {
    const hand = this.#hand(port)
    hand[kind] = (hand[kind] as number) + packs
    if (port === undefined) return
    this.#ready += packs
    this.#waits[port] = this.#waitOn(port)
    const source = this.#hookups[port]?.source
    if (source !== undefined)
      this.#left_Wh[source] = (this.#left_Wh[source] as number) - packs * this.#energy(source, kind)
  }

  /** Sum of ready times on a port, shortest first; Infinity where it cannot charge a pack or not in time. */
  #waitOn(port: number): number {
    const hand = this.#hand(port)
    let end_min = 0
    let wait_min = 0
    let placed = 0
    for (const kind of this.#ranks[port] as number[]) {
      const packs = hand[kind] as number
      const duration_min = packs > 0 ? this.#duration(port, kind) : 0
      wait_min += packs * end_min + (duration_min * packs * (packs + 1)) / 2
      end_min += packs * duration_min
      placed += packs
    }
    return placed === sumOf(hand) && end_min <= this.#session.deadline_min ? wait_min : Number.POSITIVE_INFINITY
  }

  #wait = (): number => sumOf(this.#waits)
  #hand = (port: number | undefined): number[] => this.#hands[port ?? this.#hookups.length] as number[]
  #spare = (kind: number): number => this.#hand(undefined)[kind] as number
  #energy = (source: number, kind: number): number => (this.#energies[source] as number[])[kind] as number
  #duration = (port: number, kind: number): number => lasts_min(this.#hookups[port]?.jobs[kind])

  #fits(kind: number, port: number): boolean {
    const source = this.#hookups[port]?.source as number
    return this.#energy(source, kind) <= (this.#left_Wh[source] as number) + energyTolerance_Wh
  }
}
