// The charge log: charges noted of packs that are saved by name.

import type { ChargeNote } from '../charging/upkeep/charge-note.ts'
import type { Owner } from './owner.ts'

export interface NotedCharge extends ChargeNote {
  readonly id: string
  /** Whose pack it is; who noted a charge of the club's pack is not kept. */
  readonly owner: Owner
  /** The pack's name in the kit. */
  readonly name: string
  /** What the name stood for then: another pack may bear it later. */
  readonly notation: string
  readonly at: Date
  /** What the flight controller had counted as used, in Ah. */
  readonly counted_Ah?: number
}

export interface LogMemory {
  /** The oldest charges of the pack go where it would have more than `most`. */
  add(charge: NotedCharge, most: number): Promise<void>
  /** In order of time. */
  of(owner: Owner, name: string): Promise<readonly NotedCharge[]>
  /** Takes the last one away and returns it. */
  removeLast(owner: Owner, name: string): Promise<NotedCharge | undefined>
}
