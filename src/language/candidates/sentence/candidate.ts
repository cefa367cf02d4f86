// A value that a text may tell: of which kind, how surely, and where it stands.

import type { CellClassName } from '../../../charging/things/cell-class.ts'

export type ValueName =
  | 'pack'
  | 'chemistry'
  | 'charger'
  | 'source'
  | 'state'
  | 'current'
  | 'rate'
  | 'voltage'
  | 'power'
  | 'energy'
  | 'capacity'
  | 'duration'
  | 'clock'
  | 'temperature'
  | 'resistance'
  | 'resistances'
  | 'length'
  | 'gauge'
  | 'mass'
  | 'count'
  /** How far the cells of a pack lie apart. */
  | 'apart'
  /** Where a charger ends by itself, told in other words than amps. */
  | 'until'
  /** Packs that share a board, with its places where they were told. */
  | 'board'
  /** So many at a time, or each on a port of its own. */
  | 'batch'
  | 'cellVolts'
  | 'percent'
  /** Amps out of a pack, or none, with its volts then. */
  | 'load'
  /** What a lead may take of the volts. */
  | 'drop'
  /** By its name. */
  | 'plug'
  /** Of a kilowatt-hour. */
  | 'price'
  /** Without a text it tells nothing of a charge: a price, a date, a way to go. */
  | 'number'

/** What was told of a pack; its parts in the units of a pack. */
export interface ToldPack {
  series?: number
  parallel?: number
  /** Of the whole pack, unless it is told to be that of one cell. */
  capacity_Ah?: number
  /** The capacity is that of one cell, and how many stand side by side is told elsewhere or not at all. */
  ofCell?: boolean
  chemistry?: string
  /** The type that volts name, those on its label or at which its charge ends, where none was told. */
  likely?: string
  /** Of round cells, which are no LiPo. */
  isRound?: boolean
  /** What the capacity was worked out from, where only watt-hours were told. */
  label_Wh?: number
  labelRate_C?: number
  dischargeRate_C?: number
  cellClass?: CellClassName
  cellResistance_ohm?: number
  /** How many of them, where the words right before it say so; they are no part of its span. */
  count?: number
}

/** How many stand at a level: all that are spoken of, so many, or all others. */
export type Holders = number | 'all' | 'rest'

/** What shows a number. */
export type Device = 'charger' | 'meter'

export interface Candidate {
  readonly kind: ValueName
  /**
   * Notation that the kind's reader reads ("3S 2200mAh LiPo", "2A", "12.6V pack"); of what was told in part, the
   * parts that were told ("3S", "power bank"), of which the reader says what they lack. Empty where the words name
   * no value ("dead"): to be asked about.
   */
  readonly text: string
  /** Where it stands in the plain text. */
  readonly start: number
  readonly end: number
  readonly typed: string
  /** 0 to 1: how surely it is of this kind. */
  readonly score: number
  /** The preposition or verb before it, in lower case ("from", "to", "at", "on", "until", "is", …). */
  readonly cue?: string
  /** The word behind it, in lower case. */
  readonly next?: string
  /** Of a pack: what was told of it. */
  readonly pack?: Readonly<ToldPack>
  /** Of a charger, a source or a state: the plain values that it was told by, for whoever has no use for the whole. */
  readonly parts?: readonly Candidate[]
  /** Of a level: how many packs the words right before it say that stand there. */
  readonly holders?: Holders | undefined
  /** Of a current or a rate: it is for each pack; of a count: each of several people has as many. */
  readonly each?: true | undefined
  /** Of a rate: the label allows it. */
  readonly ofLabel?: true | undefined
  /** Of a share: it is what use has left. */
  readonly remains?: true | undefined
  /** Of watts: a charger takes them at its plug. */
  readonly taken?: true | undefined
  /** Of watts: several outputs share them. */
  readonly shared?: true | undefined
  /** Of a level: what shows it, where the words about it say so. */
  readonly device?: Device | undefined
}
