// What several commands take of a charge, and how that becomes a situation.

import { optional, required } from '../../src/assistant/command.ts'
import type { Told } from '../../src/charging/situation/situation.ts'
import type { Charger } from '../../src/charging/things/charger.ts'
import type { Level } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Source } from '../../src/charging/things/source.ts'
import {
  chargerKind,
  packKind,
  sourceKind,
  stateKind,
  targetKind,
  temperatureKind,
} from '../../src/language/kinds/values.ts'

export const ofCharge = {
  pack: required(packKind),
  charger: optional(chargerKind),
  source: optional(sourceKind),
  from: optional(stateKind),
  to: optional(targetKind),
  temperature: optional(temperatureKind),
}

interface AskedOfCharge {
  readonly pack: Pack
  readonly charger?: Charger | undefined
  readonly source?: Source | undefined
  readonly from?: Level | undefined
  readonly to?: Level | undefined
  readonly current?: number | undefined
  readonly temperature?: number | undefined
}

/** The situation of charging a pack as it was asked. */
export const chargeTold = (asked: AskedOfCharge): Told & { readonly pack: Pack } => ({
  act: 'charge',
  pack: asked.pack,
  charger: asked.charger,
  source: asked.source,
  from: asked.from,
  to: asked.to,
  current_A: asked.current,
  temperature_C: asked.temperature,
})

/** Where a charge is to go, where it is storage that was asked for. */
export const isToStorage = (to: Level | undefined): boolean => to?.kind === 'named' && to.name === 'storage'
