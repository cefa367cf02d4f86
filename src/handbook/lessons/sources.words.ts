// What the lesson on what feeds a charger says.

import { writePack } from '../../language/things/pack.ts'
import type { WordsOf } from '../teaching/lesson.ts'
import { floorTolerance_V, type sources } from './sources.ts'

export const sourcesWords: WordsOf<typeof sources> = ({ say, show, own }) => ({
  title: say`What feeds the charger, and where to stop`,
  teach: ({ efficiency, fuseShare }) => [
    say`The charger can give no more power than its source: watts in are watts out and the losses. A supply that is asked for more switches off.`,
    say`Count on ${show.percent(efficiency)} of the input reaching the pack (common practice), and load a fuse with ${show.percent(fuseShare)} of its rating at most.`,
    say`A battery that feeds others must be stopped by its own floor under load, cell by cell: drained past it, it is ruined. Set an alarm there and unplug it.`,
    say`A starter battery has to start the engine afterwards: charge from it only as long as its volts at rest allow.`,
  ],
  example: ({ battery, flown, floor_V, charges }) => {
    const stop = say`stop it at ${show.number(battery.series, 0)} × ${show.perCell(floor_V / battery.series)} = ${show.voltage(floor_V)} under load`
    return charges === undefined
      ? say`A ${own(writePack(battery))} as a source: ${stop}.`
      : say`A full ${own(writePack(battery))} charges ${show.number(charges, 0)} packs of ${own(writePack(flown))}, one after the other; ${stop}.`
  },
  questions: {
    floor: ({ pack, cell_V, value }) => ({
      ask: say`A ${own(`${pack.series}S`)} ${own(pack.chemistry.name)} battery feeds a charger. Its floor here is ${show.perCell(cell_V)} per cell under load. At how many volts of the battery do you stop?`,
      wanted: say`volts of the battery, within ${show.voltage(floorTolerance_V)}`,
      why: say`${show.number(pack.series, 0)} × ${show.perCell(cell_V)} = ${show.voltage(value)}. Stop earlier where one cell gets to ${show.perCell(cell_V)} before the others.`,
    }),
    input: ({ chemistry, series, current_A, supply_V, efficiency, full_V, input_W, value }) => ({
      ask: say`A charger puts ${show.current(current_A)} into a ${own(`${series}S`)} ${own(chemistry.name)} pack at ${show.voltage(full_V)} and passes on ${show.percent(efficiency)} of what it takes in. How many amps does it draw from ${show.voltage(supply_V)}?`,
      wanted: say`amps, within ${show.percent(0.03)}`,
      why: say`${show.current(current_A)} × ${show.voltage(full_V)} ÷ ${show.number(efficiency, 2)} = ${show.power(input_W)}, over ${show.voltage(supply_V)} = ${show.current(value)}.`,
    }),
  },
})
