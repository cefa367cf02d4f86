// What is told of a source so far.

import type { SourceKind } from './source-words.ts'

/** What USB gives where no more volts are agreed on. */
export const usb_V = 5

/** The volts as typed. */
export interface Pair {
  volts?: string | undefined
  amps?: number | undefined
  watts?: number | undefined
}

export interface SourceDraft extends Pair {
  kind?: SourceKind
  /** Called by it, whatever else it is. */
  usb?: 'usb' | 'usb-c' | 'pd'
  /** How surely the words name a source, without any figure. */
  sure: number
  /** What it offers beside the last. */
  offers?: readonly Pair[]
  rest?: string
  energy_Wh?: number
  capacity_Ah?: number
  /** The numeral of the capacity, where it stood without a unit. */
  bare?: string
  engine?: 'off' | 'running'
  chemistry?: string
}

export const isLead = ({ kind, chemistry }: SourceDraft): boolean =>
  (kind === 'lead' || kind === 'starter' || kind === 'leisure' || kind === 'vehicle') &&
  (chemistry === undefined || chemistry === 'AGM')
