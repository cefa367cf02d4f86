// What is said where there is nothing to compare, or too little for a sum.

import type { Said } from '../../src/ground/locale.ts'
import { Problem } from '../../src/ground/problem.ts'

export const onlyOne: Said = ({ say }) => say`That is one pack; I need two or more to compare.`
export const twoOrMore: Said = ({ say }) => say`two or more packs with ";" between them`

export const sumMissing = (): Problem =>
  new Problem({
    what: ({ say }) => say`I need a pack, or volts with one of mAh, Wh, amps or watts.`,
    expected: ({ say }) => say`a pack for its watt-hours, or two quantities that give a third`,
    example: 'energy capacity: 2200mAh voltage: 11.1V',
  })

export const capacityForShare = (): Problem =>
  new Problem({
    what: ({ say }) => say`What share of the pack that is hangs on the capacity on its label.`,
    expected: ({ say }) => say`the pack with its capacity`,
    example: 'percent pack: 3S 720 LiHV back: 560mAh',
  })
