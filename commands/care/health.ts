// The age of a pack by the resistance of its cells, read from a charger or worked out from two loads.

import { type Asked, command, optional } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { judgeHealth, likeReadings, meanOf, resistanceFromLoads, worstOf } from '../../src/charging/upkeep/health.ts'
import { cellResistancesKind, loadKind } from '../../src/language/kinds/reading-kinds.ts'
import { cellsKind, packKind, resistanceKind, temperatureKind } from '../../src/language/kinds/values.ts'
import { logOf } from '../log/logged-pack.ts'
import { packOrCell } from '../shared/charging.ts'
import { moreShowFewer, otherCount, resistanceWanted } from './problems.words.ts'

const takes = {
  pack: optional(packKind),
  chemistry: optional(cellsKind),
  resistance: optional(cellResistancesKind),
  one: optional(loadKind),
  other: optional(loadKind),
  temperature: optional(temperatureKind),
  new: optional(resistanceKind),
}

export const health = command({
  name: 'health',
  shelf: 'care health',
  takes,
  anyOf: [['pack', 'resistance', 'one']],
  examples: [
    'health pack: 4S 1500 LiPo resistance: 9 10 9 15 mΩ temperature: 20°C',
    'health pack: 6S 1300 LiPo one: rest 23.8V other: 20A 21.9V',
    'health pack: 3S 720 LiHV resistance: 28mΩ new: 20mΩ',
    'health chemistry: 4S LiPo one: rest 16.6V other: 40A 15.1V',
  ],
  /** Of a pack of which nothing else is told, its log tells. */
  recall: async (options, [entry], context) => {
    const nothing = { options: {}, assumed: [] }
    const isAlone = Object.keys(options).length === 1 && context.dangers.length === 0
    if (!entry || !isAlone || entry.notation !== options.pack) return nothing
    const { charges } = await logOf(entry, context.memory)
    return charges.length > 0
      ? { ...nothing, instead: { command: 'log show', options: { name: entry.name } } }
      : nothing
  },
  situation: ({ pack: told, chemistry, temperature, one, other }) => {
    const rest = [one, other].find(load => load?.current_A === 0)
    const pack = packOrCell(told, chemistry ?? { chemistry: chemistries[0] }, '')
    return {
      act: 'look',
      pack,
      from: rest && (told ?? chemistry?.series) ? { kind: 'rest', perCell_V: rest.pack_V / pack.series } : undefined,
      temperature_C: temperature,
      kindOnly: told === undefined,
      doubts: told || chemistry ? [] : ['chemistryAssumed'],
    }
  },
  compute: ({ situation: { pack, temperature_C, kindOnly } }, asked) => {
    const cells_ohm = resistancesOf(asked, pack)
    const isOpen = asked.pack === undefined && asked.chemistry?.series === undefined
    return {
      // What of a pack of one cell is read goes for one of which nobody told how many it has.
      series: isOpen ? undefined : pack.series,
      cell_ohm: meanOf(cells_ohm),
      cells_ohm,
      worst: worstOf(cells_ohm),
      // How much is much hangs on the capacity, but beside what the cell had itself.
      aged:
        kindOnly && asked.new === undefined
          ? undefined
          : judgeHealth({ pack, cells_ohm, temperature_C, fresh_ohm: asked.new }),
      like: likeReadings(pack),
      isBesideItself: asked.new !== undefined,
      kindOnly,
    }
  },
  planned: ({ aged, worst }) => ({ ageTimes: aged?.times, oddTimes: worst?.times }),
  figures: ({ cell_ohm, aged, kindOnly }) => [
    figure.resistance('cellResistance', cell_ohm),
    figure.resistance('cellResistance25C', aged?.at25C_ohm),
    figure.resistance('resistanceFor1Ah', kindOnly ? undefined : aged?.at25C_ohmAh),
    figure.resistance('likeFor1Ah', kindOnly ? undefined : aged?.like_ohmAh.high),
    aged && figure.times('times', aged.times),
  ],
})

/** Throws a Problem where neither a resistance nor two loads are given, or they tell nothing. */
function resistancesOf({ resistance, one, other }: Asked<typeof takes>, pack: Pack): readonly number[] {
  if (resistance) {
    if (resistance.length === 1 || resistance.length === pack.series) return resistance
    throw otherCount(resistance, pack.series)
  }
  if (!one && !other && pack.cellResistance_ohm !== undefined) return [pack.cellResistance_ohm]
  if (!one || !other) throw resistanceWanted()
  const cell_ohm = resistanceFromLoads(one, other, pack.series)
  if (Number.isFinite(cell_ohm) && cell_ohm > 0) return [cell_ohm]
  throw moreShowFewer(one, other)
}
