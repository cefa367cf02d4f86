// A lead of one's own between a source and its charger: as commands take it, and what it is to the charge.

import { optional } from '../../src/assistant/command.ts'
import { sourceLead } from '../../src/charging/leads/lead.ts'
import type { SourceLead } from '../../src/charging/situation/situation.ts'
import { gaugeKind, lengthKind } from '../../src/language/kinds/values.ts'

export const ofLead = { gauge: optional(gaugeKind), length: optional(lengthKind) }

export interface AskedLead {
  readonly gauge?: number | undefined
  readonly length?: number | undefined
}

/** Undefined where it is not told whole. */
export const leadTold = ({ gauge, length }: AskedLead): SourceLead | undefined =>
  gauge === undefined || length === undefined ? undefined : sourceLead(gauge, length)
