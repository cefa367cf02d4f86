// Lesson: the balance lead and the spread of the cells.

import { knownOf } from '../../charging/envelope/limits/facts.ts'
import { limits } from '../../charging/envelope/limits/index.ts'
import { situationOf, type Told } from '../../charging/situation/situation.ts'
import { lipo } from '../../charging/things/chemistries.ts'
import type { HouseLimits } from '../../charging/things/house-limits.ts'
import { balanceTime_s, cellSpread } from '../../charging/upkeep/cell-spread.ts'
import type { Draw } from '../teaching/draw.ts'
import { judged, packOf } from '../teaching/drawn.ts'
import { lessonData } from '../teaching/lesson.ts'

const example = packOf({ chemistry: lipo, series: 4, capacity_Ah: 1.5 })
const exampleCells_V = [3.82, 3.83, 3.75, 3.83]
const exampleBalance_A = 0.2
const doing = ['charge', 'balance', 'balance first', 'never'] as const
export type Doing = (typeof doing)[number]

export const balance = lessonData({
  key: 'balance',
  teach: house => {
    const told = toldOf(exampleCells_V)
    const known = knownOf(situationOf(told, { house, dangers: [], doubts: [] }), {})
    return {
      uneven_V: limits.cellsUneven.than(known) ?? 0,
      apart_V: limits.cellsApart.than(known) ?? 0,
      farApart_V: limits.cellsFarApart.than(known) ?? 0,
    }
  },
  example: house => {
    const spread = cellSpread(exampleCells_V)
    return {
      pack: example,
      cells_V: exampleCells_V,
      /** Counted from 1. */
      cell: spread.lowest + 1,
      spread_V: spread.spread_V,
      doing: doingWith(exampleCells_V, house),
      balance_A: exampleBalance_A,
      balance_s: balanceTime_s(example, spread, exampleBalance_A),
    }
  },
  questions: {
    spread: draw => {
      const cells_V = drawnCells_V(draw, draw.int(1, 30) / 100)
      const [lowest_V, highest_V] = [Math.min(...cells_V), Math.max(...cells_V)]
      return {
        quantity: 'voltage' as const,
        value: highest_V - lowest_V,
        tolerance: spreadTolerance_V,
        cells_V,
        lowest_V,
        highest_V,
      }
    },
    verdict: (draw, house) => {
      // Clear of the limits, so that no answer hangs on the last digit.
      const [least, most] = draw.pick([
        [0, 2],
        [5, 8],
        [13, 18],
        [24, 45],
      ])
      const cells_V = drawnCells_V(draw, draw.int(least, most) / 100)
      return {
        choices: doing,
        chemistry: example.chemistry,
        right: doingWith(cells_V, house),
        cells_V,
        spread_V: Math.max(...cells_V) - Math.min(...cells_V),
        from: limits.cellsFarApart.from,
      }
    },
  },
})

export const spreadTolerance_V = 0.005

/** One cell lower than the highest by the spread, the others between; high enough that none is empty. */
function drawnCells_V(draw: Draw, spread_V: number): number[] {
  const high_cV = draw.int(405, 415)
  const spread_cV = Math.round(spread_V * 100)
  const between = Array.from({ length: draw.int(1, 4) }, () => high_cV - draw.int(0, Math.min(2, spread_cV)))
  return draw.shuffled([high_cV, high_cV - spread_cV, ...between]).map(centivolts => centivolts / 100)
}

const toldOf = (cells_V: readonly number[]): Told => ({
  act: 'charge',
  pack: { ...example, series: cells_V.length },
  cells_V,
})

function doingWith(cells_V: readonly number[], house: HouseLimits): Doing {
  const { found, permit } = judged(toldOf(cells_V), house)
  if (!permit) return 'never'
  const keys = found.map(({ key }) => key)
  if (keys.includes('cellsApart')) return 'balance first'
  return keys.includes('cellsUneven') ? 'balance' : 'charge'
}
