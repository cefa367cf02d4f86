// How full a resting cell is by its volts, the volts of a cell that full, and how much of a pack went back in.

import { type Asked, command, optional } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import { type Level, startOf, storageVoltage_V } from '../../src/charging/things/level.ts'
import { mostUsed } from '../../src/charging/upkeep/flight-meter.ts'
import { chargeAtRest, voltsAtRest } from '../../src/charging/upkeep/rest-charge.ts'
import { anyStateKind, capacityKind, cellsKind, packKind } from '../../src/language/kinds/values.ts'
import { packOrCell } from '../shared/charging.ts'
import { capacityForShare } from '../shared/problems.words.ts'

const takes = {
  pack: optional(packKind),
  chemistry: optional(cellsKind),
  at: optional(anyStateKind),
  back: optional(capacityKind),
}

export const percent = command({
  name: 'percent',
  shelf: 'charge percent',
  takes,
  anyOf: [['at', 'back']],
  examples: [
    'percent pack: 3S 720 LiHV at: 11.55V',
    'percent chemistry: LiFe at: 3.3V',
    'percent pack: 6S 1300 LiPo at: 40%',
    'percent pack: 3S 720 LiHV back: 560mAh',
  ],
  situation: ({ pack, chemistry, at }) => ({
    act: 'look',
    pack: packOrCell(pack, chemistry, 'percent chemistry: LiPo at: 3.85V'),
    from: at,
    kindOnly: pack === undefined,
    labelOnly: at === undefined,
  }),
  compute: (permit, { at, back, chemistry }) => {
    const { pack, kindOnly } = permit.situation
    const used = usedOf(permit, back)
    if (!at) return { by: 'back' as const, used }
    const found = foundAt(permit, at)
    const series = kindOnly ? chemistry?.series : pack.series
    return {
      ...found,
      used,
      restPack_V: series && found.perCell_V * series,
      left_Ah: kindOnly ? undefined : Math.floor(found.soc * pack.capacity_Ah * 1000) / 1000,
    }
  },
  planned: ({ used }) => ({ putBackShare: used?.share, usedShare: used?.share }),
  figures: ({ used, ...result }) => {
    const back = [
      figure.capacity('putBack', used?.back_Ah),
      figure.percent('usedShare', used?.share),
      figure.capacity('mostUsed', used?.most_Ah),
    ]
    if (result.by === 'back') return back
    const charge = figure.percent('soc', result.soc, result.socBand)
    const volts = figure.perCell('restPerCell', result.perCell_V, result.voltsBand)
    const [first, second] = result.by === 'volts' ? [charge, volts] : [volts, charge]
    return [
      first,
      second,
      figure.voltage('restPack', result.restPack_V),
      figure.capacity('chargeLeft', result.left_Ah),
      ...back,
    ]
  },
})

/** What a charger put back after a flight, as a share of the label. Throws a Problem where the label was not told. */
function usedOf({ situation: { pack, kindOnly } }: Permit, back_Ah: Asked<typeof takes>['back']) {
  if (back_Ah === undefined) return undefined
  if (kindOnly) throw capacityForShare()
  return { back_Ah, share: back_Ah / pack.capacity_Ah, most_Ah: pack.capacity_Ah * mostUsed.value }
}

/** What was told is exact, and what it says of the other has a band. */
function foundAt({ situation: { pack, house } }: Permit, at: Level) {
  const { chemistry } = pack
  const start = startOf(at, chemistry, house)
  const storage_V = storageVoltage_V(chemistry, house)
  if (start.kind === 'rest') {
    const { soc, band, perCell_V, telling } = chargeAtRest(chemistry, start.perCell_V)
    return { by: 'volts' as const, soc, socBand: band, perCell_V, voltsBand: undefined, telling, storage_V }
  }
  const { perCell_V, band } = voltsAtRest(chemistry, start.soc)
  const { telling } = chargeAtRest(chemistry, perCell_V)
  return { by: 'charge' as const, soc: start.soc, socBand: undefined, perCell_V, voltsBand: band, telling, storage_V }
}
