// Limits on packs that share a board.

import { practice } from '../../situation/rule.ts'
import { mostApart_V } from '../../things/practice.ts'
import { above, below, type Limits, ofCell } from './row.ts'

const boards = practice('packs of one kind and one state on a board')

/** Most pressing first within a weight. */
export const boardsLimits = {
  slowStartOnBoard: below(
    'refuse',
    ['board'],
    'lowest_V',
    'perCell',
    ofCell(c => c.precharge_V),
    practice('a slow start never on a board'),
  ),
  boardOfOne: below('refuse', ['board'], 'boardPacks', 'count', 2, boards),
  boardHurt: above('refuse', ['board'], 'boardHurt', 'count', 0, boards),
  boardUnknown: above('refuse', ['board'], 'boardUnknown', 'count', 0, boards),
  boardSeries: above('refuse', ['board'], 'boardSeries', 'count', 1, boards),
  boardChemistries: above('refuse', ['board'], 'boardChemistries', 'count', 1, boards),
  boardApart: above('refuse', ['board'], 'apart_V', 'voltage', mostApart_V.value, practice(mostApart_V.source)),
  boardFlow: above('refuse', ['board'], 'flowShare', 'percent', 1, boards),
  boardCharge: above('must', ['board'], 'apartCharge', 'percent', 0.25, boards),
} as const satisfies Limits
