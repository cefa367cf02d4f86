// What a supply can give this charger, by cell count; or the smallest supply that carries a setting.

import { type Asked, command, optional } from '../../src/assistant/command.ts'
import { figure, type Quantified } from '../../src/assistant/quantified.ts'
import { settingFor } from '../../src/charging/setting/setting.ts'
import { timedCharge } from '../../src/charging/setting/timed-charge.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import type { Told } from '../../src/charging/situation/situation.ts'
import { behindCable, neededFor, suppliedTo } from '../../src/charging/sources/supply.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { chargerKind, chemistryKind, currentKind, packKind, sourceKind } from '../../src/language/kinds/values.ts'
import { currentOn } from '../shared/asked-current.ts'
import { nothingToSupply } from './supply-problems.words.ts'

const takes = {
  source: optional(sourceKind),
  charger: optional(chargerKind),
  pack: optional(packKind),
  chemistry: optional(chemistryKind),
  current: optional(currentKind),
  cable: optional(currentKind),
}

type AskedSupply = Asked<typeof takes>

/** A cable that carries 5 A is assumed out loud where an offer above 3 A hangs on it. */
const fullCable_A = 5

const told = (asked: AskedSupply): Told & { readonly pack: Pack } => {
  const { source, charger, current, cable = fullCable_A } = asked
  const around = { act: 'charge', charger, source: source && behindCable(source, cable) } as const
  if (asked.pack) {
    const current_A = current === undefined ? undefined : currentOn(charger, current)
    return { ...around, pack: asked.pack, current_A }
  }
  return {
    ...around,
    pack: standIn(asked),
    // No pack is meant, so none lacks the lead that the charger looks for.
    balanceLead: true,
    doubts: asked.chemistry || !source ? [] : ['chemistryAssumed'],
  }
}

/** For packs that nobody named: so large that only charger and supply hold the current down. */
const standIn = ({ chemistry = chemistries[0], charger }: AskedSupply): Pack => ({
  chemistry,
  series: charger?.minSeries ?? 1,
  parallel: 1,
  capacity_Ah: 60,
})

const supplied = (permit: Permit, { pack }: AskedSupply) => {
  const { feed, carried } = suppliedTo(permit)
  return {
    kind: 'supplied' as const,
    feed,
    carried: pack ? carried.filter(({ series }) => series === pack.series) : carried,
    setting: pack && settingFor(permit),
    timed: pack && timedCharge(permit, { current_A: permit.situation.current_A }),
    permit,
  }
}

const needed = (permit: Permit) => {
  const found = neededFor(permit)
  const timed = timedCharge(permit, { current_A: found.current_A })
  return { kind: 'needed' as const, ...found, timed, permit }
}

export const supply = command({
  name: 'supply',
  takes,
  examples: [
    'supply source: PD 65W charger: 0.1-10A by 0.1 200W 6S 10-30V',
    'supply source: PD 100W charger: 0.3/0.8/1.5/3A 60W 1-5S 10-26V cable: 3A',
    'supply pack: 4S 1500 LiPo current: 2A charger: 0.1-10A by 0.1 200W 6S 10-30V',
  ],
  situation: told,
  compute: (permit, asked) => {
    if (asked.source) return supplied(permit, asked)
    if (asked.pack) return needed(permit)
    throw nothingToSupply()
  },
  planned: result => ({
    takes_s: result.timed?.time_s.high,
    carried: result.timed?.carried,
    ...(result.kind === 'supplied'
      ? { set_A: result.setting?.current_A, input_A: result.setting?.input_A ?? result.feed.current_A }
      : { set_A: result.current_A, input_A: result.usb && result.input_W / result.usb.offer.voltage_V }),
  }),
  figures: (result): readonly Quantified<SupplyFigure>[] =>
    result.kind === 'supplied' ? suppliedFigures(result) : neededFigures(result),
})

type SupplyFigure =
  | 'supplyPower'
  | 'supplyVoltage'
  | 'supplyCurrent'
  | `current${number}S`
  | 'setCurrent'
  | 'cutoffPack'
  | 'inputPower'
  | 'usbSupply'
  | `supplyCurrent${number}V`

const suppliedFigures = ({ feed, carried }: ReturnType<typeof supplied>) => [
  figure.power('supplyPower', feed.power_W),
  figure.voltage('supplyVoltage', feed.lowest_V),
  figure.current('supplyCurrent', feed.current_A),
  ...carried.map(({ series, current_A }) => figure.current(`current${series}S`, current_A)),
]

const neededFigures = ({ setting, current_A, input_W, usb, benches }: ReturnType<typeof needed>) => [
  figure.current('setCurrent', current_A),
  figure.voltage('cutoffPack', setting.cutoffPack_V),
  figure.power('inputPower', input_W),
  figure.power('usbSupply', usb?.supply_W),
  ...benches.map(bench => figure.current(`supplyCurrent${bench.voltage_V}V`, bench.current_A)),
]
