// Lesson: storage.

import { lihv, liIon, lipo } from '../../charging/things/chemistries.ts'
import type { Chemistry } from '../../charging/things/chemistry.ts'
import { storageVoltage_V } from '../../charging/things/level.ts'
import { storageMove, storageTolerance_V } from '../../charging/upkeep/storage.ts'
import { writePack } from '../../language/things/pack.ts'
import { drawnPack, packOf } from '../teaching/draw.ts'
import { lesson } from '../teaching/lesson.ts'

const example = packOf({ chemistry: lipo, series: 4, capacity_Ah: 1.5 })
const near_V = storageTolerance_V.value

export const storage = lesson('storage', ({ say, show, own }, house) => {
  const ways = {
    charge: say`charge it to storage`,
    discharge: say`discharge it to storage`,
    stay: say`leave it as it is`,
  }
  const storageOf_V = (chemistry: Chemistry) => storageVoltage_V(chemistry, house)
  return {
    title: say`Storage`,
    teach: [
      say`A pack that will not fly within two days goes to storage: ${show.perCell(storageOf_V(lipo))} per cell at rest for ${own(lipo.name)} here. Full packs age fast and swell; empty ones sink until they are ruined.`,
      say`Within ${show.perCell(near_V)} per cell it is there. Measure at rest, half an hour or more after the last use.`,
      say`Store packs cool and dry, in something that cannot burn, out of the aircraft, and look at their volts every few months.`,
      say`To bring a full pack down, fly it or let the charger discharge it, with you beside it.`,
    ],
    example: () => {
      const { storage_V, moved_Ah } = storageMove(example, { kind: 'soc', soc: 1 }, house)
      return say`A full ${own(writePack(example))}: to ${show.perCell(storage_V)} per cell, ${show.voltage(storage_V * example.series)} for the pack, about ${show.charge(moved_Ah)} have to come out.`
    },
    questions: {
      volts: draw => {
        const { series, chemistry } = drawnPack(draw)
        const cell_V = storageOf_V(chemistry)
        const value = series * cell_V
        return {
          ask: say`At how many volts is a ${own(`${series}S`)} ${own(chemistry.name)} pack stored here, where a cell is stored at ${show.perCell(cell_V)}?`,
          wanted: say`volts of the pack, within ${show.perCell(near_V)} per cell`,
          why: say`${show.number(series, 0)} × ${show.perCell(cell_V)} = ${show.voltage(value)}.`,
          quantity: 'voltage',
          value,
          tolerance: near_V * series,
        }
      },
      way: draw => {
        const pack = drawnPack(draw, draw.pick([lipo, lihv, liIon]))
        const { name, full_V } = pack.chemistry
        const storage_V = storageOf_V(pack.chemistry)
        const off_V = draw.pick([-20, -12, -1, 0, 1, 12, 20, 30]) / 100
        const rest_V = Math.min(full_V.value, Number((storage_V + off_V).toFixed(2)))
        const { way } = storageMove(pack, { kind: 'rest', perCell_V: rest_V }, house)
        return {
          ask: say`A ${own(name)} pack rests at ${show.perCell(rest_V)} per cell and the weekend is over. What do you do?`,
          choices: draw.shuffled(Object.values(ways)),
          right: ways[way],
          why: say`Storage is ${show.perCell(storage_V)} for ${own(name)} here, so ${ways[way]}.`,
        }
      },
    },
  }
})
