// How full a resting cell is by its volts, and the volts of a cell that full.

import { command, optional, required } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import { type Level, startOf } from '../../src/charging/things/level.ts'
import { chargeAtRest, voltsAtRest } from '../../src/charging/upkeep/rest-charge.ts'
import { anyStateKind, cellsKind, packKind } from '../../src/language/kinds/values.ts'
import { packOrCell } from '../shared/one-cell.ts'

export const percent = command({
  name: 'percent',
  takes: { pack: optional(packKind), chemistry: optional(cellsKind), at: required(anyStateKind) },
  examples: [
    'percent pack: 3S 720 LiHV at: 11.55V',
    'percent chemistry: LiFe at: 3.3V',
    'percent pack: 6S 1300 LiPo at: 40%',
  ],
  situation: ({ pack, chemistry, at }) => ({
    act: 'look',
    pack: packOrCell(pack, chemistry, 'percent chemistry: LiPo at: 3.85V'),
    from: at,
    kindOnly: pack === undefined,
  }),
  compute: (permit, { at, chemistry }) => {
    const { pack, kindOnly } = permit.situation
    const found = foundAt(permit, at)
    const series = kindOnly ? chemistry?.series : pack.series
    return {
      ...found,
      restPack_V: series && found.perCell_V * series,
      left_Ah: kindOnly ? undefined : Math.floor(found.soc * pack.capacity_Ah * 1000) / 1000,
    }
  },
  figures: ({ by, soc, socBand, perCell_V, voltsBand, restPack_V, left_Ah }) => {
    const charge = figure.percent('soc', soc, socBand)
    const volts = figure.perCell('restPerCell', perCell_V, voltsBand)
    const found = by === 'volts' ? [charge, volts] : [volts, charge]
    return [...found, figure.voltage('restPack', restPack_V), figure.capacity('chargeLeft', left_Ah)]
  },
})

/** What was told is exact, and what it says of the other has a band. */
function foundAt({ situation: { pack, house } }: Permit, at: Level) {
  const { chemistry } = pack
  const start = startOf(at, chemistry, house)
  if (start.kind === 'rest') {
    const { soc, band, perCell_V, telling } = chargeAtRest(chemistry, start.perCell_V)
    return { by: 'volts' as const, soc, socBand: band, perCell_V, voltsBand: undefined, telling }
  }
  const { perCell_V, band } = voltsAtRest(chemistry, start.soc)
  const { telling } = chargeAtRest(chemistry, perCell_V)
  return { by: 'charge' as const, soc: start.soc, socBand: undefined, perCell_V, voltsBand: band, telling }
}
