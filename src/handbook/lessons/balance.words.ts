// Lesson: the balance lead and the spread of the cells.

import { knownOf } from '../../charging/envelope/limits/facts.ts'
import { limits } from '../../charging/envelope/limits/index.ts'
import { balanceTime_s } from '../../charging/setting/balancing.ts'
import { situationOf, type Told } from '../../charging/situation/situation.ts'
import { lipo } from '../../charging/things/chemistries.ts'
import { cellSpread } from '../../charging/upkeep/cell-spread.ts'
import { joined } from '../../ground/text.ts'
import { type Draw, judged, packOf } from '../teaching/draw.ts'
import { lesson } from '../teaching/lesson.ts'

const example = packOf({ chemistry: lipo, series: 4, capacity_Ah: 1.5 })
const exampleCells_V = [3.82, 3.83, 3.75, 3.83]
const exampleBalance_A = 0.2
const spreadTolerance_V = 0.005

const toldOf = (cells_V: readonly number[]): Told => ({
  act: 'charge',
  pack: { ...example, series: cells_V.length },
  cells_V,
})

export const balance = lesson('balance', ({ say, show, own }, house) => {
  const doing = {
    charge: say`charge it as usual`,
    balance: say`balance it while it charges, at half of the capacity an hour at most`,
    'balance first': say`balance it first, gently, and look again tomorrow`,
    never: say`do not charge it`,
  }
  const doingWith = (cells_V: readonly number[]) => {
    const { found, permit } = judged(toldOf(cells_V), house)
    if (!permit) return doing.never
    const keys = found.map(({ key }) => key)
    if (keys.includes('cellsApart')) return doing['balance first']
    return keys.includes('cellsUneven') ? doing.balance : doing.charge
  }
  const volts = (cells_V: readonly number[]) => joined(cells_V.map(show.perCell), ', ')
  const known = knownOf(situationOf(toldOf(exampleCells_V), { house, dangers: [], doubts: [] }), {})
  const limit = (key: 'cellsUneven' | 'cellsApart' | 'cellsFarApart') => show.perCell(limits[key].than(known) ?? 0)
  return {
    title: say`The balance lead and the spread of the cells`,
    teach: [
      say`The balance lead lets the charger see every cell. Without it one cell can be overcharged while the pack as a whole looks right: connect it for every charge.`,
      say`At rest, cells within ${limit('cellsUneven')} of each other are balanced. To ${limit('cellsApart')} the charger balances them. Beyond that they are balanced first, and beyond ${limit('cellsFarApart')} the pack is not charged. These are common practice.`,
      say`A cell that falls behind again and again is wearing out: the others age around it.`,
      say`A reading near 0 V, or about twice that of the others, is a broken balance lead, not a cell.`,
    ],
    example: () => {
      const spread = cellSpread(exampleCells_V)
      const balance_s = balanceTime_s(example, spread, exampleBalance_A)
      return say`A ${own(`${example.series}S`)} ${own(example.chemistry.name)} shows ${volts(exampleCells_V)}: cell ${show.number(spread.lowest + 1, 0)} is ${show.perCell(spread.spread_V)} below the highest, so ${doingWith(exampleCells_V)}. Balancing at ${show.current(exampleBalance_A)} takes ${show.roughly(balance_s, Math.ceil)} or more.`
    },
    questions: {
      spread: draw => {
        const cells_V = drawnCells_V(draw, draw.int(1, 30) / 100)
        const [lowest_V, highest_V] = [Math.min(...cells_V), Math.max(...cells_V)]
        const value = highest_V - lowest_V
        return {
          ask: say`The cells of a pack show ${volts(cells_V)}. What is their spread?`,
          wanted: say`volts, within ${show.number(spreadTolerance_V, 3)} V`,
          why: say`The highest less the lowest: ${show.perCell(highest_V)} − ${show.perCell(lowest_V)} = ${show.perCell(value)}.`,
          quantity: 'voltage',
          value,
          tolerance: spreadTolerance_V,
        }
      },
      verdict: draw => {
        // Clear of the limits, so that no answer hangs on the last digit.
        const [least, most] = draw.pick([
          [0, 2],
          [5, 8],
          [13, 18],
          [24, 45],
        ])
        const cells_V = drawnCells_V(draw, draw.int(least, most) / 100)
        const right = doingWith(cells_V)
        return {
          ask: say`A ${own(example.chemistry.name)} pack at rest shows ${volts(cells_V)}. What do you do?`,
          choices: Object.values(doing),
          right,
          why: say`The spread is ${show.perCell(Math.max(...cells_V) - Math.min(...cells_V))}: ${right} (${own(limits.cellsFarApart.from)}).`,
        }
      },
    },
  }
})

/** One cell lower than the highest by the spread, the others between; high enough that none is empty. */
function drawnCells_V(draw: Draw, spread_V: number): number[] {
  const high_cV = draw.int(405, 415)
  const spread_cV = Math.round(spread_V * 100)
  const between = Array.from({ length: draw.int(1, 4) }, () => high_cV - draw.int(0, Math.min(2, spread_cV)))
  return draw.shuffled([high_cV, high_cV - spread_cV, ...between]).map(centivolts => centivolts / 100)
}
