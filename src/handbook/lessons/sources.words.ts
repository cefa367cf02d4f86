// Lesson: what feeds the charger, and where to stop.

import { planSource } from '../../charging/sources/source-plan.ts'
import { sourceFloor_V } from '../../charging/things/battery-store.ts'
import { lihv, liIon } from '../../charging/things/chemistries.ts'
import { fullVoltage_V } from '../../charging/things/level.ts'
import { chargerEfficiency, fuseShare } from '../../charging/things/practice.ts'
import { writePack } from '../../language/things/pack.ts'
import { drawnChemistry, judged, packOf } from '../teaching/draw.ts'
import { lesson } from '../teaching/lesson.ts'

const battery = packOf({ chemistry: liIon, series: 4, capacity_Ah: 5 })
const flown = packOf({ chemistry: lihv, series: 3, capacity_Ah: 0.72 })
const floorTolerance_V = 0.05
const efficiency = chargerEfficiency.value

export const sources = lesson('sources', ({ say, show, own }, house) => ({
  title: say`What feeds the charger, and where to stop`,
  teach: [
    say`The charger can give no more power than its source: watts in are watts out and the losses. A supply that is asked for more switches off.`,
    say`Count on ${show.percent(efficiency)} of the input reaching the pack (common practice), and load a fuse with ${show.percent(fuseShare.value)} of its rating at most.`,
    say`A battery that feeds others must be stopped by its own floor under load, cell by cell: drained past it, it is ruined. Set an alarm there and unplug it.`,
    say`A starter battery has to start the engine afterwards: charge from it only as long as its volts at rest allow.`,
  ],
  example: () => {
    const from = { kind: 'named', name: 'empty' } as const
    const { permit } = judged({ act: 'charge', pack: flown, from, source: { kind: 'battery', pack: battery } }, house)
    const floor_V = sourceFloor_V(battery, house)
    const stop = say`stop it at ${show.number(battery.series, 0)} × ${show.perCell(floor_V / battery.series)} = ${show.voltage(floor_V)} under load`
    return permit
      ? say`A full ${own(writePack(battery))} charges ${show.number(planSource(permit).planned, 0)} packs of ${own(writePack(flown))}, one after the other; ${stop}.`
      : say`A ${own(writePack(battery))} as a source: ${stop}.`
  },
  questions: {
    floor: draw => {
      const pack = packOf({ chemistry: drawnChemistry(draw), series: draw.int(3, 6), capacity_Ah: 5 })
      const value = sourceFloor_V(pack, house)
      const cell = show.perCell(value / pack.series)
      return {
        ask: say`A ${own(`${pack.series}S`)} ${own(pack.chemistry.name)} battery feeds a charger. Its floor here is ${cell} per cell under load. At how many volts of the battery do you stop?`,
        wanted: say`volts of the battery, within ${show.voltage(floorTolerance_V)}`,
        why: say`${show.number(pack.series, 0)} × ${cell} = ${show.voltage(value)}. Stop earlier where one cell gets to ${cell} before the others.`,
        quantity: 'voltage',
        value,
        tolerance: floorTolerance_V,
      }
    },
    input: draw => {
      const chemistry = drawnChemistry(draw)
      const series = draw.int(2, 4)
      const current_A = draw.pick([1, 2, 3])
      const supply_V = draw.pick([12, 13.8, 20, 24])
      const full_V = series * fullVoltage_V(chemistry, house)
      const input_W = (current_A * full_V) / efficiency
      const value = input_W / supply_V
      return {
        ask: say`A charger puts ${show.current(current_A)} into a ${own(`${series}S`)} ${own(chemistry.name)} pack at ${show.voltage(full_V)} and passes on ${show.percent(efficiency)} of what it takes in. How many amps does it draw from ${show.voltage(supply_V)}?`,
        wanted: say`amps, within ${show.percent(0.03)}`,
        why: say`${show.current(current_A)} × ${show.voltage(full_V)} ÷ ${show.number(efficiency, 2)} = ${show.power(input_W)}, over ${show.voltage(supply_V)} = ${show.current(value)}.`,
        quantity: 'current',
        value,
        tolerance: 0.03 * value,
      }
    },
  },
}))
