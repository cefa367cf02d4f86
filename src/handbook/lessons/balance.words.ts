// What the lesson on the balance lead says.

import { joined, type Text } from '../../ground/text.ts'
import type { WordsOf } from '../teaching/lesson.ts'
import { type balance, type Doing, spreadTolerance_V } from './balance.ts'

export const balanceWords: WordsOf<typeof balance> = ({ say, show, own }) => {
  const doing: Readonly<Record<Doing, Text>> = {
    charge: say`charge it as usual`,
    balance: say`balance it while it charges, at half of the capacity an hour at most`,
    'balance first': say`balance it first, gently, and look again tomorrow`,
    never: say`do not charge it`,
  }
  const volts = (cells_V: readonly number[]) => joined(cells_V.map(show.perCell), ', ')
  return {
    title: say`The balance lead and the spread of the cells`,
    teach: ({ uneven_V, apart_V, farApart_V }) => [
      say`The balance lead lets the charger see every cell. Without it one cell can be overcharged while the pack as a whole looks right: connect it for every charge.`,
      say`At rest, cells within ${show.perCell(uneven_V)} of each other are balanced. To ${show.perCell(apart_V)} the charger balances them. Beyond that they are balanced first, and beyond ${show.perCell(farApart_V)} the pack is not charged. These are common practice.`,
      say`A cell that falls behind again and again is wearing out: the others age around it.`,
      say`A reading near 0 V, or about twice that of the others, is a broken balance lead, not a cell.`,
    ],
    example: ({ pack, cells_V, cell, spread_V, doing: now, balance_A, balance_s }) =>
      say`A ${own(`${pack.series}S`)} ${own(pack.chemistry.name)} shows ${volts(cells_V)}: cell ${show.number(cell, 0)} is ${show.perCell(spread_V)} below the highest, so ${doing[now]}. Balancing at ${show.current(balance_A)} takes ${show.duration(balance_s)} or more.`,
    questions: {
      spread: ({ cells_V, lowest_V, highest_V, value }) => ({
        ask: say`The cells of a pack show ${volts(cells_V)}. What is their spread?`,
        wanted: say`volts, within ${show.number(spreadTolerance_V, 3)} V`,
        why: say`The highest less the lowest: ${show.perCell(highest_V)} − ${show.perCell(lowest_V)} = ${show.perCell(value)}.`,
      }),
      verdict: ({ chemistry, cells_V, spread_V, right, from }) => ({
        ask: say`A ${own(chemistry.name)} pack at rest shows ${volts(cells_V)}. What do you do?`,
        choice: one => doing[one],
        why: say`The spread is ${show.perCell(spread_V)}: ${doing[right]} (${own(from)}).`,
      }),
    },
  }
}
