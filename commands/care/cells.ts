// Measured cell voltages judged: the spread, which cell, and how long balancing takes.

import { type Asked, command, optional, required } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { sumOf } from '../../src/charging/numbers/sum.ts'
import { balanceTime_s, usualBalance_A } from '../../src/charging/setting/balancing.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { cellSpread, evenness, readingFault } from '../../src/charging/upkeep/cell-spread.ts'
import { chargeAtRest } from '../../src/charging/upkeep/rest-charge.ts'
import { cellVoltsKind, conditionKind } from '../../src/language/kinds/reading-kinds.ts'
import { cellsKind, currentKind, packKind } from '../../src/language/kinds/values.ts'
import { chemistryWanted, faultyReadings } from './problems.words.ts'

/** A charge ends this near to full, also where it is a gentle one, in V. */
const shortOfFull_V = 0.12

const takes = {
  pack: optional(packKind),
  chemistry: optional(cellsKind),
  volts: required(cellVoltsKind),
  when: optional(conditionKind),
  balance: optional(currentKind),
}

export const cells = command({
  name: 'cells',
  shelf: 'care cells',
  takes,
  // Volts of cells one by one are judged, whatever is asked of them.
  alone: ({ volts }, instead) =>
    volts !== undefined && ['handbook', 'current', 'time', 'percent', 'storage'].includes(instead),
  examples: [
    'cells pack: 4S 1500 LiPo volts: 3.82 3.83 3.79 3.83 balance: 0.2A',
    'cells pack: 3S 720 LiHV volts: 4.35 4.34 4.31 when: full',
    'cells chemistry: LiPo volts: 3.82 3.83 3.79 3.83',
  ],
  situation: asked => {
    const pack = packOf(asked)
    // Readings that are none of its cells judge nothing; dangers that were told are judged all the same.
    const cells_V = readingFault(pack, asked.volts) ? undefined : asked.volts
    return { act: 'look', pack, cells_V, when: asked.when, kindOnly: asked.pack === undefined }
  },
  compute: ({ situation: { pack, kindOnly } }, { volts, when = 'rest', balance }) => {
    const fault = readingFault(pack, volts)
    if (fault) throw faultyReadings(fault, volts, pack)
    const spread = cellSpread(volts)
    const balance_A = balance ?? usualBalance_A.value
    const sum_V = sumOf(volts)
    return {
      ...spread,
      evenness: evenness(spread.spread_V, when),
      endedShort: when === 'full' && spread.highest_V < pack.chemistry.full_V.value - shortOfFull_V,
      sum_V,
      left: when === 'rest' ? chargeAtRest(pack.chemistry, sum_V / volts.length) : undefined,
      balance_A,
      balance_s: kindOnly ? undefined : balanceTime_s(pack, spread, balance_A),
    }
  },
  figures: ({ spread_V, lowest, lowest_V, highest, highest_V, sum_V, left, balance_s }) => [
    figure.perCell('spread', spread_V),
    figure.count('lowestCell', lowest + 1),
    figure.perCell('lowestPerCell', lowest_V),
    figure.count('highestCell', highest + 1),
    figure.perCell('highestPerCell', highest_V),
    figure.voltage('packVoltage', sum_V),
    figure.percent('left', left?.soc, left?.band),
    figure.duration('balanceTime', balance_s),
  ],
})

/** As many cells as were read, where it is not said how many, at any capacity. Throws a Problem without a chemistry. */
function packOf({ pack, chemistry: ofType, volts }: Asked<typeof takes>): Pack {
  if (pack) return pack
  if (ofType) {
    const { chemistry, series = volts.length } = ofType
    return { chemistry, series, parallel: 1, capacity_Ah: 1 }
  }
  throw chemistryWanted(cellVoltsKind.write(volts).replaceAll('V', ''))
}
