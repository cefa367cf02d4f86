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
  /** Of a socket in a wall. */
  mains_V?: number
  energy_Wh?: number
  capacity_Ah?: number
  /** Its mAh are told at the volts of USB, as they leave it; watt-hours are those of its cells anyway. */
  rated?: true
  /** The numeral of the capacity, where it stood without a unit. */
  bare?: string
  engine?: 'off' | 'running'
  chemistry?: string
}

export const isLead = ({ kind, chemistry }: SourceDraft): boolean =>
  (kind === 'lead' || kind === 'starter' || kind === 'leisure' || kind === 'vehicle') &&
  (chemistry === undefined || chemistry === 'AGM')

/** Of six cells, in V. */
const rests_V = { least: 10.5, most: 14.9 } as const

/** Whether a lead battery of six cells, or of twelve, may stand at rest at so many volts. */
export function mayRest(volts: number, isTwelve: boolean): boolean {
  const ofSix_V = isTwelve ? volts / 2 : volts
  return ofSix_V >= rests_V.least && ofSix_V <= rests_V.most
}

/** A lead battery, of sources in notation. */
export const ofLeadBattery = /^(?:deep-cycle|leisure|lead|car|starter)\b/

/** Whether a source in notation is a lead battery that may stand at rest at so many volts. */
export const isLeadResting = (source: string, volts: number): boolean =>
  ofLeadBattery.test(source) && mayRest(volts, /\b24V\b/.test(source))
