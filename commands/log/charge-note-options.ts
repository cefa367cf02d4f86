// The details of a charge that is noted, and the values that a pack cannot have.

import { packNameKind } from '../../src/assistant/kit/kit-name.ts'
import { type Inputs, optional, required } from '../../src/assistant/old-command.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { Show } from '../../src/ground/show.ts'
import {
  capacityKind,
  durationKind,
  packKind,
  stateKind,
  targetKind,
  temperatureKind,
} from '../../src/language/kinds/values.ts'
import { cellResistancesKind, cellVoltsKind } from '../care/reading-kinds.ts'

/** No sound pack takes back so much more than its label: it is a slip of the pen, or something is badly wrong. */
const mostOverLabel = 1.25

export const noteOptions = {
  name: required(packNameKind, { description: 'of the saved pack', phrase: text => text }),
  'put-back': required(capacityKind, {
    description: 'what the charger counted into the pack',
    phrase: text => `took back ${text}`,
  }),
  from: optional(stateKind, {
    description: 'volts per cell at rest before it; empty after a full discharge',
  }),
  to: optional(targetKind, { description: 'where the charge ended; full when not said' }),
  took: optional(durationKind, { description: 'how long it took', phrase: text => `in ${text}` }),
  cells: optional(cellVoltsKind, {
    description: 'volts of each cell at its end',
    phrase: text => `cells at its end ${text}`,
  }),
  resistance: optional(cellResistancesKind, {
    description: 'of one cell, or one for each cell',
    phrase: text => `cells of ${text}`,
  }),
  temperature: optional(temperatureKind, {
    description: 'of the cells when the resistance was read; 25 °C when not said',
    phrase: text => `at ${text}`,
  }),
  counted: optional(capacityKind, {
    description: 'what the flight controller had counted as used, from full',
    phrase: text => `counted in flight ${text}`,
  }),
}

export type NoteAsked = Inputs<typeof noteOptions>

/** Throws a Problem for values that this pack cannot have. */
export function refuseSlips(inputs: NoteAsked, pack: Pack, show: Show): void {
  const put_Ah = inputs['put-back']
  const most_Ah = mostOverLabel * pack.capacity_Ah
  if (put_Ah > most_Ah) {
    throw new Problem({
      what: `More than ${show.capacity(most_Ah)} does not go into a sound pack of ${show.capacity(pack.capacity_Ah)}. If the charger did count that, do not charge the pack again before you know why.`,
      token: capacityKind.write(put_Ah),
      expected: `at most ${show.capacity(most_Ah)} for ${packKind.write(pack)}`,
      example: `put-back: ${capacityKind.write(pack.capacity_Ah)}`,
    })
  }
  if (
    inputs.counted !== undefined &&
    inputs.to &&
    !(inputs.to.kind === 'named' && inputs.to.name === 'full')
  ) {
    throw new Problem({
      what: 'Only a charge to full puts back what was counted in a flight from full.',
      token: targetKind.write(inputs.to),
      expected: 'to: full, or no "counted"',
      example: 'log charge name: wren put-back: 610mAh counted: 560mAh',
    })
  }
  for (const [option, values] of [
    ['cells', inputs.cells],
    ['resistance', inputs.resistance],
  ] as const) {
    if (!values || values.length === pack.series || (option === 'resistance' && values.length === 1)) continue
    throw new Problem({
      what: `There are ${values.length} values for ${pack.series} cells.`,
      token: option,
      expected: `${pack.series} values${option === 'resistance' ? ', or one for all' : ''}`,
      example: option === 'cells' ? 'cells: 4.35 4.34 4.35' : 'resistance: 12mΩ',
    })
  }
}
