// What the lesson on storage says.

import type { Text } from '../../ground/text.ts'
import { writePack } from '../../language/things/pack.ts'
import type { WordsOf } from '../teaching/lesson.ts'
import type { storage, Way } from './storage.ts'

export const storageWords: WordsOf<typeof storage> = ({ say, show, own }) => {
  const ways: Readonly<Record<Way, Text>> = {
    charge: say`charge it to storage`,
    discharge: say`discharge it to storage`,
    stay: say`leave it as it is`,
  }
  return {
    title: say`Storage`,
    teach: ({ chemistry, storage_V, near_V }) => [
      say`A pack that will not fly within two days goes to storage: ${show.perCell(storage_V)} per cell at rest for ${own(chemistry.name)} here. Full packs age fast and swell; empty ones sink until they are ruined.`,
      say`Within ${show.perCell(near_V)} per cell it is there. Measure at rest, half an hour or more after the last use.`,
      say`Store packs cool and dry, in something that cannot burn, out of the aircraft, and look at their volts every few months.`,
      say`To bring a full pack down, fly it or let the charger discharge it, with you beside it.`,
    ],
    example: ({ pack, storage_V, moved_Ah }) =>
      say`A full ${own(writePack(pack))}: to ${show.perCell(storage_V)} per cell, ${show.voltage(storage_V * pack.series)} for the pack, about ${show.capacity(moved_Ah)} have to come out.`,
    questions: {
      volts: ({ pack, cell_V, near_V, value }) => ({
        ask: say`At how many volts is a ${own(`${pack.series}S`)} ${own(pack.chemistry.name)} pack stored here, where a cell is stored at ${show.perCell(cell_V)}?`,
        wanted: say`volts of the pack, within ${show.perCell(near_V)} per cell`,
        why: say`${show.number(pack.series, 0)} × ${show.perCell(cell_V)} = ${show.voltage(value)}.`,
      }),
      way: ({ chemistry, storage_V, rest_V, right }) => ({
        ask: say`A ${own(chemistry.name)} pack rests at ${show.perCell(rest_V)} per cell and the weekend is over. What do you do?`,
        choice: way => ways[way],
        why: say`Storage is ${show.perCell(storage_V)} for ${own(chemistry.name)} here, so ${ways[right]}.`,
      }),
    },
  }
}
