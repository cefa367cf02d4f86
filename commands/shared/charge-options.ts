// Details that several commands take of a charge, worded the same wherever they stand.

import { optional, required } from '../../src/assistant/old-command.ts'
import { chargerKind, packKind, temperatureKind } from '../../src/language/kinds/values.ts'

export const chargedPack = required(packKind, {
  description: 'cells, capacity and chemistry',
  phrase: text => text,
})

export const onCharger = optional(chargerKind, {
  description: 'the currents it offers, and what else you know of it',
  phrase: text => `on a charger with ${text}`,
})

export const cellTemperature = optional(temperatureKind, {
  description: 'of the cells; a room when not said',
  phrase: text => `cells at ${text}`,
})
