// What is said of resistances that are missing, or tell nothing.

import { type Said, told } from '../../src/ground/locale.ts'

export const otherCount = told(
  ({ say, show }, readings: number, cells: number) =>
    say`There are ${show.number(readings, 0)} resistances for ${show.number(cells, 0)} cells.`,
)

export const oneOrEach = told(({ say, show }, cells: number) => say`one resistance, or ${show.number(cells, 0)}`)

export const resistanceWanted: Said = ({ say }) => say`I need the resistance of a cell, or the volts under two loads.`
export const resistanceOrLoads: Said = ({ say, own }) =>
  say`${own('resistance:')} as the charger shows it, or ${own('one:')} and ${own('other:')} with amps and pack volts`
export const moreShowFewer: Said = ({ say }) => say`More amps must show fewer volts; these two readings do not.`
export const twoLoads: Said = ({ say }) => say`two loads that differ, the volts of the pack under each`
