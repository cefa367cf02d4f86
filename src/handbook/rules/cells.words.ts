// What is said of how low, how high and how far apart the cells read.

import type { cellsLimits } from '../../charging/envelope/limits/cells.ts'
import { cellSpread } from '../../charging/upkeep/cell-spread.ts'
import { flatLike, fullerLike } from '../../charging/upkeep/lookalike.ts'
import type { Met, WordsOf } from './lines.ts'

export const cellsWords: WordsOf<typeof cellsLimits> = locale => {
  const { say, show, own } = locale
  const cellsOf = ({ found: { known } }: Met) => known.situation.cells_V ?? []
  const chemistryOf = ({ found: { known } }: Met) => known.situation.pack?.chemistry
  const atFull = ({ found: { known } }: Met) => known.situation.when === 'full'
  const otherLabel = (met: Met) => {
    const chemistry = chemistryOf(met)
    return chemistry && fullerLike(chemistry, cellsOf(met))
  }
  /** Volts that nobody measured cell by cell may also be what somebody means to set. */
  const fromCells = (met: Met) => cellsOf(met).length > 0
  /** Which cell reads lowest, where they were read one by one. */
  const lowestOf = (met: Met) => {
    const [first, ...others] = cellsOf(met)
    if (first === undefined) return own('')
    const { lowest, lowest_V } = cellSpread([first, ...others])
    return say`: cell ${show.number(lowest + 1, 0)} is lowest at ${show.perCell(lowest_V)}`
  }
  return {
    deadCell: ({ met, than }) => [
      say`Do not charge or use it: ${met} a cell is below ${than}, where such cells are damaged.`,
      say`Retire it: outdoors, plugs taped, to where batteries are collected. Do not try to revive it.`,
    ],
    overCharged: met => {
      const other = otherLabel(met)
      return [
        say`Do not charge or fly it: ${met.met} a cell is far above full, ${show.perCell(chemistryOf(met)?.full_V.value ?? 0)}.`,
        other
          ? say`Every cell reads so: these look like ${own(other.name)} cells. Check the label and a second meter; until you know, outdoors on stone with it, away from people.`
          : fromCells(met)
            ? say`Outdoors on stone, away from people; it can catch fire long after it is unplugged. If a second meter agrees, hand it in.`
            : say`Never set a charger to that: ${show.perCell(chemistryOf(met)?.full_V.value ?? 0)} is the most. If a pack rests so high, outdoors on stone with it, away from people: it can catch fire long after it is unplugged.`,
      ]
    },
    overFull: met => {
      const other = otherLabel(met)
      return [
        say`Do not charge it: ${met.met} a cell is above full, ${met.than}.`,
        other
          ? say`Every cell reads so: these look like ${own(other.name)} cells. Check the label and a second meter before you do anything else.`
          : fromCells(met)
            ? say`Check it with a second meter, and type and cell count on the charger. If it is so, discharge it to storage outdoors and watch it.`
            : say`Never set a charger to that: ${met.than} is the most. If a pack rests so high, check it with a second meter, discharge it to storage outdoors and watch it.`,
      ]
    },
    cellsFarApart: met => [
      say`Do not charge it: the cells are ${met.met} apart, more than ${met.than}. One of them is hurt${lowestOf(met)}.`,
      say`Retire the pack, or have it looked at by somebody who knows.`,
    ],
    slowStart: ({ met, than }) => [
      say`${met} a cell is very low: start with a tenth of the current until every cell is above ${than}.`,
      say`Not there within half an hour, or low for more than a day: retire it. Stay beside it and feel it; stop if it grows warm or swells.`,
    ],
    cellsApart: met => [
      atFull(met)
        ? say`The cells ended ${met.met} apart: leave the pack on the balancer until they meet, and look again tomorrow.`
        : say`The cells are ${met.met} apart: balance them first, at a fifth of the usual current, and look again tomorrow.`,
      say`If they drift apart again, retire the pack.`,
    ],
    overFullElsewhere: ({ met, than }) => [
      say`${met} a cell is above full, ${than}: check it with a second meter. Keep it outdoors on stone, in sight, until it is lower.`,
    ],
    cellsUneven: met => [
      atFull(met)
        ? say`The cells ended ${met.met} apart: note it, and if it grows from charge to charge, one of them is weak.`
        : say`The cells are ${met.met} apart: balance them, and charge at half of the capacity an hour at most.`,
    ],
    looksFlat: met => {
      const chemistry = chemistryOf(met)
      const like = chemistry && flatLike(chemistry, cellsOf(met))
      return [
        say`Cells that all read so are ${own(like?.name ?? '')}, or empty: make sure of the label before you charge them as ${own(chemistry?.name ?? '')}.`,
      ]
    },
    lowCell: ({ met, than }) => [
      say`${met} a cell is below the usual landing volts of ${than}: check every cell, and charge it soon.`,
    ],
    belowFloor: ({ met, than }) => [
      say`${met} a cell is below the usual landing volts of ${than}: check every cell, and charge it soon.`,
    ],
  }
}
