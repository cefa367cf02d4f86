// The age of a pack by the resistance of its cells, read from a charger or worked out from two loads.

import { type Asked, command, optional, required } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { judgeHealth, resistanceFromLoads } from '../../src/charging/upkeep/health.ts'
import { Problem } from '../../src/ground/problem.ts'
import { cellResistancesKind, loadKind } from '../../src/language/kinds/reading-kinds.ts'
import { packKind, resistanceKind, temperatureKind } from '../../src/language/kinds/values.ts'
import {
  moreShowFewer,
  oneOrEach,
  otherCount,
  resistanceOrLoads,
  resistanceWanted,
  twoLoads,
} from './problems.words.ts'

const takes = {
  pack: required(packKind),
  resistance: optional(cellResistancesKind),
  one: optional(loadKind),
  other: optional(loadKind),
  temperature: optional(temperatureKind),
  new: optional(resistanceKind),
}

export const health = command({
  name: 'health',
  takes,
  examples: [
    'health pack: 4S 1500 LiPo resistance: 9 10 9 15 mΩ temperature: 20°C',
    'health pack: 6S 1300 LiPo one: rest 23.8V other: 20A 21.9V',
    'health pack: 3S 720 LiHV resistance: 28mΩ new: 20mΩ',
  ],
  situation: ({ pack, temperature, one, other }) => {
    const rest = [one, other].find(load => load?.current_A === 0)
    return {
      act: 'look',
      pack,
      from: rest && { kind: 'rest', perCell_V: rest.pack_V / pack.series },
      temperature_C: temperature,
    }
  },
  compute: ({ situation: { pack, temperature_C } }, asked) => {
    const cells_ohm = resistancesOf(asked)
    return {
      ...judgeHealth({ pack, cells_ohm, temperature_C, fresh_ohm: asked.new }),
      cells_ohm,
      isBesideItself: asked.new !== undefined,
    }
  },
  planned: ({ times, oddTimes }) => ({ ageTimes: times, oddTimes }),
  figures: ({ cell_ohm, at25C_ohm, at25C_ohmAh, like_ohmAh, times }) => [
    figure.resistance('cellResistance', cell_ohm),
    figure.resistance('cellResistance25C', at25C_ohm),
    figure.resistance('resistanceFor1Ah', at25C_ohmAh),
    figure.resistance('likeFor1Ah', like_ohmAh.high),
    figure.times('times', times),
  ],
})

/** Throws a Problem where neither a resistance nor two loads are given, or they tell nothing. */
function resistancesOf({ pack, resistance, one, other }: Asked<typeof takes>): readonly number[] {
  if (resistance) {
    if (resistance.length === 1 || resistance.length === pack.series) return resistance
    throw new Problem({
      what: otherCount(resistance.length, pack.series),
      token: cellResistancesKind.write(resistance),
      expected: oneOrEach(pack.series),
      example: 'resistance: 12mΩ',
    })
  }
  if (!one && !other && pack.cellResistance_ohm !== undefined) return [pack.cellResistance_ohm]
  if (!one || !other) {
    throw new Problem({
      what: resistanceWanted,
      expected: resistanceOrLoads,
      example: 'health pack: 6S 1300 LiPo one: rest 23.8V other: 20A 21.9V',
    })
  }
  const cell_ohm = resistanceFromLoads(one, other, pack.series)
  if (Number.isFinite(cell_ohm) && cell_ohm > 0) return [cell_ohm]
  throw new Problem({
    what: moreShowFewer,
    token: `${loadKind.write(one)}, ${loadKind.write(other)}`,
    expected: twoLoads,
    example: 'one: rest 23.8V other: 20A 21.9V',
  })
}
