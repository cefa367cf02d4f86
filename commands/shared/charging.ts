// What several commands take of a charge, at which currents, and how that becomes a situation.

import { optional, required } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import type { TimedCharge } from '../../src/charging/setting/timed-charge.ts'
import type { Told } from '../../src/charging/situation/situation.ts'
import type { Charger } from '../../src/charging/things/charger.ts'
import type { Level } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Source } from '../../src/charging/things/source.ts'
import { largestStep_A, nearestStep_A, smallestStep_A } from '../../src/charging/things/steps.ts'
import {
  apartKind,
  chargerKind,
  packKind,
  sourceKind,
  stateKind,
  targetKind,
  temperatureKind,
} from '../../src/language/kinds/values.ts'
import type { CellType } from '../../src/language/things/cell-type.ts'
import { type AskedLead, leadTold } from './own-lead.ts'
import { packWanted, tooLow } from './problems.words.ts'

export const ofCharge = {
  pack: required(packKind),
  charger: optional(chargerKind),
  source: optional(sourceKind),
  from: optional(stateKind),
  to: optional(targetKind),
  temperature: optional(temperatureKind),
  apart: optional(apartKind),
}

interface AskedOfCharge extends AskedLead {
  readonly pack: Pack
  readonly charger?: Charger | undefined
  readonly source?: Source | undefined
  readonly from?: Level | undefined
  readonly to?: Level | undefined
  readonly current?: number | undefined
  readonly temperature?: number | undefined
  readonly apart?: number | undefined
}

export const chargeTold = (asked: AskedOfCharge): Told & { readonly pack: Pack } => ({
  act: 'charge',
  pack: asked.pack,
  charger: asked.charger,
  source: asked.source,
  lead: leadTold(asked),
  from: asked.from,
  to: asked.to,
  current_A: asked.current,
  temperature_C: asked.temperature,
  apart_V: asked.apart,
})

/** Where a charge is to go, where it is storage that was asked for. */
export const isToStorage = (to: Level | undefined): boolean => to?.kind === 'named' && to.name === 'storage'

/** The charger's largest step not above `asked_A`. Throws a Problem where even its smallest one is. */
export function currentOn(charger: Charger | undefined, asked_A: number): number {
  if (!charger) return asked_A
  const step_A = nearestStep_A(charger.currents, asked_A, asked_A)
  if (step_A !== undefined) return step_A
  throw tooLow(asked_A, smallestStep_A(charger.currents), largestStep_A(charger.currents))
}

/** The pack, or the cells at any capacity, one where it is not said how many. Throws a Problem where neither is named. */
export function packOrCell(pack: Pack | undefined, cells: CellType | undefined, example: string): Pack {
  if (pack) return pack
  if (cells) return { chemistry: cells.chemistry, series: cells.series ?? 1, parallel: 1, capacity_Ah: 1 }
  throw packWanted(example)
}

export const stopFigures = ({ stops }: Pick<TimedCharge, 'stops'>) => [
  figure.capacity('stopCapacity', stops.capacity_Ah),
  figure.duration('stopTimer', stops.timer_s),
]
