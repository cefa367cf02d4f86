// Lesson: what feeds the charger, and where to stop.

import { judge } from '../../charging/envelope/judge.ts'
import { fullVoltage_V } from '../../charging/setting/old-cutoff.ts'
import { situationOf } from '../../charging/situation/situation.ts'
import { planSource } from '../../charging/sources/source-plan.ts'
import { sourceFloor_V } from '../../charging/things/battery-store.ts'
import { lihv, liIon } from '../../charging/things/chemistries.ts'
import type { Pack } from '../../charging/things/pack.ts'
import { chargerEfficiency, fuseShare } from '../../charging/things/practice.ts'
import { readCurrent, readVoltage, writeCurrent, writeVoltage } from '../../language/quantities/quantities.ts'
import { writePack } from '../../language/things/pack.ts'
import { askQuantity } from './asking.ts'
import { drawnChemistry, packOf } from './drawn.ts'
import type { Lesson } from './lesson.ts'

const battery: Pack = packOf({ chemistry: liIon, series: 4, capacity_Ah: 5 })
const flown: Pack = packOf({ chemistry: lihv, series: 3, capacity_Ah: 0.72 })

export const sources: Lesson = {
  key: 'sources',
  title: 'What feeds the charger, and where to stop',
  concerns: { source: { kind: 'battery', pack: battery } },
  teach: ({ show }) => [
    'The charger can give no more power than its source: watts in are watts out and the losses. A supply that is asked for more switches off.',
    `Count on ${show.percent(chargerEfficiency.value)} of the input reaching the pack (common practice), and load a fuse with ${show.percent(fuseShare.value)} of its rating at most.`,
    'A battery that feeds others must be stopped by its own floor under load, cell by cell: drained past it, it is ruined. Set an alarm there and unplug it.',
    'A starter battery has to start the engine afterwards: charge from it only as long as its volts at rest allow.',
  ],
  example: ({ house, show }) => {
    const { permit } = judge(
      situationOf(
        {
          act: 'charge',
          pack: flown,
          from: { kind: 'named', name: 'empty' },
          source: { kind: 'battery', pack: battery },
        },
        { house, dangers: [], doubts: [] },
      ),
    )
    const plan = permit && planSource(permit)
    const floor_V = sourceFloor_V(battery, house)
    const stop = `stop it at ${battery.series} × ${show.perCell(floor_V / battery.series)} = ${show.voltage(floor_V)} under load`
    return plan
      ? `A full ${writePack(battery)} charges ${plan.planned} packs of ${writePack(flown)}, one after the other; ${stop}.`
      : `A ${writePack(battery)} as a source: ${stop}.`
  },
  questions: [
    {
      key: 'floor',
      draw: (draw, { house, show }) => {
        const pack = packOf({ chemistry: drawnChemistry(draw), series: draw.int(3, 6), capacity_Ah: 5 })
        const value = sourceFloor_V(pack, house)
        const cell_V = value / pack.series
        return askQuantity({
          ask: `A ${pack.series}S ${pack.chemistry.name} battery feeds a charger. Its floor here is ${show.perCell(cell_V)} per cell under load. At how many volts of the battery do you stop?`,
          value,
          tolerance: 0.05,
          wanted: 'volts of the battery, within 0.05 V',
          read: readVoltage,
          write: writeVoltage,
          why: `${pack.series} × ${show.perCell(cell_V)} = ${show.voltage(value)}. Stop earlier where one cell gets to ${show.perCell(cell_V)} before the others.`,
        })
      },
    },
    {
      key: 'input',
      draw: (draw, { house, show }) => {
        const chemistry = drawnChemistry(draw)
        const { name } = chemistry
        const series = draw.int(2, 4)
        const current_A = draw.pick([1, 2, 3])
        const supply_V = draw.pick([12, 13.8, 20, 24])
        const share = chargerEfficiency.value
        const full_V = series * fullVoltage_V(chemistry, house)
        const value = (current_A * full_V) / share / supply_V
        return askQuantity({
          ask: `A charger puts ${show.current(current_A)} into a ${series}S ${name} pack at ${show.voltage(full_V)} and passes on ${show.percent(share)} of what it takes in. How many amps does it draw from ${show.voltage(supply_V)}?`,
          value,
          tolerance: 0.03 * value,
          wanted: 'amps, within 3 %',
          read: readCurrent,
          write: writeCurrent,
          why: `${show.current(current_A)} × ${show.voltage(full_V)} ÷ ${show.number(share, 2)} = ${show.power((current_A * full_V) / share)}, over ${show.voltage(supply_V)} = ${show.current(value)}.`,
        })
      },
    },
  ],
}
