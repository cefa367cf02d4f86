// What is missing for a sum.

import { Problem } from '../../src/ground/problem.ts'

export const sumMissing = (): Problem =>
  new Problem({
    what: ({ say }) => say`I need a pack, or volts with one of mAh, Wh, amps or watts.`,
    expected: ({ say }) => say`a pack for its watt-hours, or two quantities that give a third`,
    example: 'energy capacity: 2200mAh voltage: 11.1V',
  })
