// Limits on packs that share a board.

import { practice } from '../../situation/rule.ts'
import { mostApart_V } from '../../things/practice.ts'
import { above, below, guiding, type Limits, ofCell } from './row.ts'

const boards = practice('packs of one kind and one state on a board')

/** Most pressing first within a weight. */
export const boardsLimits = {
  slowStartOnBoard: guiding(
    below('refuse', ['board'], 'lowest_V', practice('a slow start never on a board'), ofCell('precharge_V')),
  ),
  boardOfOne: below('refuse', ['board'], 'boardPacks', boards, 2),
  boardHurt: above('refuse', ['board'], 'boardHurt', boards, 0),
  boardSeries: above('refuse', ['board'], 'boardSeries', boards, 1),
  boardChemistries: above('refuse', ['board'], 'boardChemistries', boards, 1),
  boardApart: above('refuse', ['board'], 'apart_V', practice(mostApart_V.source), mostApart_V.value),
  boardFlow: above('refuse', ['board'], 'flowShare', boards, 1),
  boardUnknown: above('must', ['board'], 'boardUnknown', boards, 0),
  boardCharge: above('must', ['board'], 'apartCharge', boards, 0.25),
} as const satisfies Limits
