// Lesson: storage.

import { lihv, liIon, lipo } from '../../charging/things/chemistries.ts'
import { storageVoltage_V } from '../../charging/things/level.ts'
import { storageMove, storageTolerance_V } from '../../charging/upkeep/storage.ts'
import { readVoltage, writeVoltage } from '../../language/quantities/quantities.ts'
import { writePack } from '../../language/things/pack.ts'
import { askChoice, askQuantity } from './asking.ts'
import { drawnPack, packOf } from './drawn.ts'
import type { Lesson } from './lesson.ts'

const example = packOf({ chemistry: lipo, series: 4, capacity_Ah: 1.5 })

const ways = {
  charge: 'charge it to storage',
  discharge: 'discharge it to storage',
  stay: 'leave it as it is',
} as const

export const storage: Lesson = {
  key: 'storage',
  title: 'Storage',
  concerns: { pack: example },
  teach: ({ house, show }) => [
    `A pack that will not fly within two days goes to storage: ${show.perCell(storageVoltage_V(example.chemistry, house))} per cell at rest for LiPo here. Full packs age fast and swell; empty ones sink until they are ruined.`,
    `Within ${show.perCell(storageTolerance_V.value)} per cell it is there. Measure at rest, half an hour or more after the last use.`,
    'Store packs cool and dry, in something that cannot burn, out of the aircraft, and look at their volts every few months.',
    'To bring a full pack down, fly it or let the charger discharge it, with you beside it.',
  ],
  example: ({ house, show }) => {
    const move = storageMove(example, { kind: 'soc', soc: 1 }, house)
    return `A full ${writePack(example)}: to ${show.perCell(move.storage_V)} per cell, ${show.voltage(move.storage_V * example.series)} for the pack, about ${show.capacity(move.moved_Ah)} have to come out.`
  },
  questions: [
    {
      key: 'volts',
      draw: (draw, { house, show }) => {
        const pack = drawnPack(draw)
        const cell_V = storageVoltage_V(pack.chemistry, house)
        const value = pack.series * cell_V
        return askQuantity({
          ask: `At how many volts is a ${pack.series}S ${pack.chemistry.name} pack stored here, where a cell is stored at ${show.perCell(cell_V)}?`,
          value,
          tolerance: storageTolerance_V.value * pack.series,
          wanted: `volts of the pack, within ${show.perCell(storageTolerance_V.value)} per cell`,
          read: readVoltage,
          write: writeVoltage,
          why: `${pack.series} × ${show.perCell(cell_V)} = ${show.voltage(value)}.`,
        })
      },
    },
    {
      key: 'way',
      draw: (draw, { house, show }) => {
        const pack = drawnPack(draw, draw.pick([lipo, lihv, liIon]))
        const storage_V = storageVoltage_V(pack.chemistry, house)
        const { full_V } = pack.chemistry
        const off_V = draw.pick([-20, -12, -1, 0, 1, 12, 20, 30]) / 100
        const rest_V = Math.min(full_V.value, Number((storage_V + off_V).toFixed(2)))
        const { way } = storageMove(pack, { kind: 'rest', perCell_V: rest_V }, house)
        return askChoice(draw, {
          ask: `A ${pack.chemistry.name} pack rests at ${show.perCell(rest_V)} per cell and the weekend is over. What do you do?`,
          choices: [ways.charge, ways.discharge, ways.stay],
          right: ways[way],
          why: `Storage is ${show.perCell(storage_V)} for ${pack.chemistry.name} here, so ${ways[way]}.`,
        })
      },
    },
  ],
}
