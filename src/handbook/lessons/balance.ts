// Lesson: the balance lead and the spread of the cells.

import { lipo } from '../../charging/things/chemistries.ts'
import {
  balanceTime_s,
  cellSpread,
  type Evenness,
  evenness,
  spreads,
} from '../../charging/upkeep/cell-spread.ts'
import { readVoltage, writeVoltage } from '../../language/quantities/quantities.ts'
import { askChoice, askQuantity } from './asking.ts'
import type { Draw } from './draw.ts'
import { packOf } from './drawn.ts'
import type { Lesson } from './lesson.ts'

const example = packOf({ chemistry: lipo, series: 4, capacity_Ah: 1.5 })
const exampleCells_V = [3.82, 3.83, 3.75, 3.83]

const doing: Record<Evenness, string> = {
  balanced: 'charge it as usual',
  uneven: 'charge it gently and let the charger balance it',
  apart: 'balance it first, and look again tomorrow: one cell is weak',
  'far apart': 'do not charge it',
}

const doingFor = (spread_V: number): string => doing[evenness(spread_V)]

export const balance: Lesson = {
  key: 'balance',
  title: 'The balance lead and the spread of the cells',
  concerns: { pack: example },
  teach: ({ show }) => {
    const { uneven_V, apart_V, farApart_V } = spreads.value
    const volts = (value_V: number) => show.perCell(value_V)
    return [
      'The balance lead lets the charger see every cell. Without it one cell can be overcharged while the pack as a whole looks right: connect it for every charge.',
      `At rest, cells within ${volts(uneven_V)} of each other are balanced. To ${volts(apart_V)} the charger balances them. Beyond that one cell is weak and the pack is balanced first, and beyond ${volts(farApart_V)} it is not charged. These are common practice.`,
      'A cell that falls behind again and again is wearing out: the others age around it.',
      'A reading near 0 V, or about twice that of the others, is a broken balance lead, not a cell.',
    ]
  },
  example: ({ show }) => {
    const spread = cellSpread(exampleCells_V)
    return `A 4S LiPo shows ${exampleCells_V.map(show.perCell).join(', ')}: cell ${spread.lowest + 1} is ${show.perCell(spread.spread_V)} below the highest, so ${doingFor(spread.spread_V)}. Balancing at ${show.current(0.2)} takes ${show.duration(balanceTime_s(example, spread, 0.2))} or more.`
  },
  questions: [
    {
      key: 'spread',
      draw: (draw, { show }) => {
        const cells_V = drawnCells_V(draw, draw.int(1, 30) / 100)
        const value = Math.max(...cells_V) - Math.min(...cells_V)
        return askQuantity({
          ask: `The cells of a pack show ${cells_V.map(show.perCell).join(', ')}. What is their spread?`,
          value,
          tolerance: 0.005,
          wanted: 'volts, within 0.005 V',
          read: readVoltage,
          write: writeVoltage,
          why: `The highest less the lowest: ${show.perCell(Math.max(...cells_V))} − ${show.perCell(Math.min(...cells_V))} = ${show.perCell(value)}.`,
        })
      },
    },
    {
      key: 'verdict',
      draw: (draw, { show }) => {
        // Clear of the thresholds, so that no answer hangs on the last digit.
        const [least, most] = draw.pick([
          [0, 2],
          [5, 8],
          [12, 18],
          [24, 45],
        ])
        const cells_V = drawnCells_V(draw, draw.int(least, most) / 100)
        const { spread_V } = cellSpread(cells_V)
        return askChoice(
          draw,
          {
            ask: `A LiPo pack at rest shows ${cells_V.map(show.perCell).join(', ')}. What do you do?`,
            choices: [doing.balanced, doing.uneven, doing.apart, doing['far apart']],
            right: doingFor(spread_V),
            why: `The spread is ${show.perCell(spread_V)}: ${doingFor(spread_V)} (${spreads.standing}: ${spreads.source}).`,
          },
          true,
        )
      },
    },
  ],
}

/** One cell lower than the highest by the spread, the others between; high enough that none is empty. */
function drawnCells_V(draw: Draw, spread_V: number): number[] {
  const high_cV = draw.int(405, 415)
  const spread_cV = Math.round(spread_V * 100)
  const between = Array.from({ length: draw.int(1, 4) }, () => high_cV - draw.int(0, Math.min(2, spread_cV)))
  return draw.shuffled([high_cV, high_cV - spread_cV, ...between]).map(centivolts => centivolts / 100)
}
