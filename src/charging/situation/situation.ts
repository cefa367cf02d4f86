// All that decides whether and how a battery may be charged, drained, stored, carried or connected. Undefined is unknown.

import type { Charger } from '../things/charger.ts'
import type { HouseLimits } from '../things/house-limits.ts'
import type { Learned } from '../things/learned.ts'
import type { Level } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'
import type { Source } from '../things/source.ts'
import type { Danger } from './dangers.ts'
import type { Doubt } from './doubts.ts'
import { type KeptDanger, keptIn } from './kept.ts'

/** What somebody is about to do with the battery; `look` is to judge it only. */
export type Act = 'charge' | 'drain' | 'store' | 'carry' | 'board' | 'look'

/** A pack beside others on one board. */
export interface BesidePack {
  readonly pack: Pack
  readonly from?: Level
  readonly dangers?: readonly Danger[]
}

/** Its resistance, out and back, and what it bears for long. */
export interface SourceLead {
  readonly resistance_ohm: number
  readonly most_A: number
}

/** What the question tells, named as the options are. */
export interface Told {
  readonly act: Act
  readonly pack?: Pack
  /** Where the pack stands. */
  readonly from?: Level
  /** Where it is to go; full when not said. */
  readonly to?: Level
  /** Readings of its cells at rest, in V. */
  readonly cells_V?: readonly number[]
  /** When they were read; at rest when not said, or at the end of a charge. */
  readonly when?: 'rest' | 'full'
  /** How far its cells lie apart at rest, where they were not told one by one, in V. */
  readonly apart_V?: number
  /** What a charger showed at the end of a charge and what a meter said then, in V a cell. */
  readonly meter?: { readonly shown_V: number; readonly measured_V: number }
  /** Only the kind of the cells is known: what hangs on their number or capacity is not spoken of. */
  readonly kindOnly?: boolean
  /** Only what the label says it holds is asked about: which cells and how many decides nothing. */
  readonly labelOnly?: boolean
  readonly charger?: Charger
  readonly source?: Source
  /** State of charge of a battery source, 0 to 1; full when not said. */
  readonly sourceSoc?: number
  /** What of its label a battery source is to keep, 0 to 1, where that is more than its floors leave. */
  readonly sourceKeeps?: number
  /** One's own between source and charger; none when not said. */
  readonly lead?: SourceLead | undefined
  /** What of its power the source gives this charger where it feeds others too, in W; all of it when not said. */
  readonly sourceShare_W?: number
  /** Asked for, in A: into the pack, out of it where it is drained. */
  readonly current_A?: number
  readonly temperature_C?: number
  /** Whether the pack has a balance lead; a pack of one cell is taken to have none when not said, others one. */
  readonly balanceLead?: boolean
  /** All the packs that share a board, `pack` standing for them together. */
  readonly board?: readonly BesidePack[]
  /** Dangers that ride on a value: of a pack that is saved as swollen, or called so in a list. */
  readonly dangers?: readonly Danger[]
  /** What had to be taken for granted about these values. */
  readonly doubts?: readonly Doubt[]
}

/** What holds around the question: the club's limits, and what else its words told. */
export interface Around {
  readonly house: HouseLimits
  readonly dangers: readonly Danger[]
  readonly doubts: readonly Doubt[]
  /** What was told before, of whichever pack. */
  readonly kept?: readonly KeptDanger[]
  /** What own charges have told of packs, whichever they are. */
  readonly learned?: readonly Learned[] | undefined
}

/** Of what was told before, only what is told of its packs. */
export interface Situation extends Omit<Told, 'dangers' | 'doubts'>, Around {}

/** What is told of one pack of a board is a danger to the whole board. */
export function situationOf({ dangers = [], doubts = [], ...told }: Told, around: Around): Situation {
  const doubted = [...doubts, ...around.doubts]
  const kept = keptIn(around.kept ?? [], told, doubted)
  const standing = kept.filter(one => !one.doubted).map(({ danger }) => danger)
  const beside = (told.board ?? []).flatMap(one => one.dangers ?? [])
  return {
    ...told,
    ...around,
    kept,
    dangers: [...new Set([...dangers, ...beside, ...around.dangers, ...standing])],
    doubts: [...new Set(kept.length > standing.length ? [...doubted, 'toldBefore' as const] : doubted)],
  }
}

/** What an answer has somebody do, as far as it decides: judged again once it is computed. */
export interface Planned {
  /** Into the pack, or out of it where it is drained, in A. */
  readonly set_A?: number
  /** The long end of how long somebody has to stay with it, in s. */
  readonly takes_s?: number
  /** How long a pack that is drained carries the load, in s. */
  readonly lasts_s?: number
  /** The lowest volts of a cell of the drained pack while it carries the load, in V. */
  readonly underLoad_V?: number
  /** What the charger takes from its source, in A. */
  readonly input_A?: number
  /** What the cells warm to while they are charged, in °C. */
  readonly warmest_C?: number
  /** How many of the wanted charges the source carries whole. */
  readonly carried?: number
  /** Packs that were wanted. */
  readonly wanted?: number
  /** Chargers that are at work at once. */
  readonly atOnce?: number
  /** Packs that were wanted and are left out, for lack of time, energy or power. */
  readonly short?: number
  /** The largest current between packs of a board over what the pack may take or give. */
  readonly flowShare?: number
  /** What is carried aboard an aircraft, in Wh; that of the label when not said. */
  readonly energy_Wh?: number
  /** Packs aboard that need the leave of the airline. */
  readonly needLeave?: number
  /** What the cells are charged to, in V a cell, whatever the charger shows. */
  readonly cutoff_V?: number
  /** The resistance of the cells over the most that their like have, or over what they had when new. */
  readonly ageTimes?: number
  /** The resistance of the worst cell over that of the middle one. */
  readonly oddTimes?: number
  /** As `ageTimes`, where a log has followed it. */
  readonly agedTimes?: number
  /** What it holds by its log over its label, taken in its favour, and over what it held when the log began. */
  readonly labelShare?: number
  readonly startShare?: number
  /** What a charge put back over the label, what a flight used over it, and the current of a charge on average, in A. */
  readonly putBackShare?: number | undefined
  readonly usedShare?: number | undefined
  readonly charged_A?: number
  /** Readings of its cells that came with it, in V, and when they were read. */
  readonly cells_V?: readonly number[]
  readonly when?: 'rest' | 'full'
}
