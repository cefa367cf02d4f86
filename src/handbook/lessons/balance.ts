// Lesson: the balance lead and the spread of the cells.

import { lipo } from '../../charging/things/chemistries.ts'
import type { Pack } from '../../charging/things/pack.ts'
import { type CellFinding, checkCells, spreads } from '../../charging/upkeep/cell-check.ts'
import { readVoltage, writeVoltage } from '../../language/quantities/quantities.ts'
import { askChoice, askQuantity } from './asking.ts'
import type { Draw } from './draw.ts'
import { packOf } from './drawn.ts'
import type { Lesson } from './lesson.ts'

const example = packOf({ chemistry: lipo, series: 4, capacity_Ah: 1.5 })
const exampleCells_V = [3.82, 3.83, 3.75, 3.83]

type Judged = Extract<CellFinding, { kind: 'spread' }>['judged']

const doing: Record<Judged, string> = {
  balanced: 'charge it as usual',
  'balance first': 'balance it, then charge it',
  'weak cell': 'charge it with care: one cell is weak',
  'do not charge': 'do not charge it',
}

export const balance: Lesson = {
  key: 'balance',
  title: 'The balance lead and the spread of the cells',
  concerns: { pack: example },
  teach: ({ show }) => {
    const { balanced_V, balance_V, weak_V } = spreads.value
    const volts = (value_V: number) => show.perCell(value_V)
    return [
      'The balance lead lets the charger see every cell. Without it one cell can be overcharged while the pack as a whole looks right: connect it for every charge.',
      `At rest, cells within ${volts(balanced_V)} of each other are balanced. To ${volts(balance_V)} the charger balances them. Beyond that one cell is weak, and beyond ${volts(weak_V)} the pack is not charged. These are common practice.`,
      'A cell that falls behind again and again is wearing out: the others age around it.',
      'A reading near 0 V, or about twice that of the others, is a broken balance lead, not a cell.',
    ]
  },
  example: ({ show }) => {
    const check = checkCells({ pack: example, cells_V: exampleCells_V, at: 'rest', balance_A: 0.2 })
    return `A 4S LiPo shows ${exampleCells_V.map(show.perCell).join(', ')}: cell ${check.lowest + 1} is ${show.perCell(check.spread_V)} below the highest, so ${doing[judgedIn(example, exampleCells_V)]}. Balancing at ${show.current(0.2)} takes ${show.duration(check.balance_s)} or more.`
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
          [14, 26],
          [34, 45],
        ])
        const cells_V = drawnCells_V(draw, draw.int(least, most) / 100)
        const pack = { ...example, series: cells_V.length }
        const { spread_V } = checkCells({ pack, cells_V, at: 'rest', balance_A: 1 })
        return askChoice(
          draw,
          {
            ask: `A LiPo pack at rest shows ${cells_V.map(show.perCell).join(', ')}. What do you do?`,
            choices: [doing.balanced, doing['balance first'], doing['weak cell'], doing['do not charge']],
            right: doing[judgedIn(pack, cells_V)],
            why: `The spread is ${show.perCell(spread_V)}: ${doing[judgedIn(pack, cells_V)]} (${spreads.standing}: ${spreads.source}).`,
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

function judgedIn(pack: Pack, cells_V: readonly number[]): Judged {
  const { findings } = checkCells({ pack, cells_V, at: 'rest', balance_A: 1 })
  const spread = findings.find(finding => finding.kind === 'spread')
  if (!spread) throw new RangeError('these readings are none of cells')
  return spread.judged
}
