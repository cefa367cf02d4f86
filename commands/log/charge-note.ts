// The details of a charge that is noted, and the note that becomes of them.

import { type Asked, optional, required } from '../../src/assistant/command.ts'
import { packNameKind } from '../../src/assistant/kit/kit-name.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import { goalOf, type State, startOf } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { ChargeNote } from '../../src/charging/upkeep/charge-note.ts'
import { cellResistancesKind, cellVoltsKind } from '../../src/language/kinds/reading-kinds.ts'
import {
  capacityKind,
  currentKind,
  durationKind,
  targetKind,
  temperatureKind,
} from '../../src/language/kinds/values.ts'
import { beforeKind } from './before-kind.ts'

export const noteTakes = {
  name: required(packNameKind),
  'put-back': required(capacityKind),
  from: optional(beforeKind),
  to: optional(targetKind),
  took: optional(durationKind),
  current: optional(currentKind),
  until: optional(currentKind),
  'to-cutoff': optional(durationKind),
  cells: optional(cellVoltsKind),
  resistance: optional(cellResistancesKind),
  temperature: optional(temperatureKind),
  counted: optional(capacityKind),
}

export type NoteAsked = Asked<typeof noteTakes>

/** In the core's terms, under the limits of the club: what it calls full and storage. */
export function noteOf(asked: NoteAsked, { chemistry }: Pack, house: HouseLimits): ChargeNote {
  const { from } = asked
  return {
    charge_Ah: asked['put-back'],
    from: from && startOf(from, chemistry, house),
    to: endOf(asked, chemistry, house),
    cells_V: asked.cells,
    cells_ohm: asked.resistance,
    temperature_C: asked.temperature,
    current_A: asked.current,
    termination_A: asked.until,
    duration_s: asked.took,
    timeToCutoff_s: asked['to-cutoff'],
  }
}

function endOf(
  { to = { kind: 'named', name: 'full' } }: NoteAsked,
  chemistry: Pack['chemistry'],
  house: HouseLimits,
): State {
  const goal = goalOf(to, chemistry, house)
  return goal.kind === 'soc' ? { kind: 'soc', soc: goal.soc } : { kind: 'rest', perCell_V: goal.perCell_V }
}
