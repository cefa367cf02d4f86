// Bringing a pack to storage: which way, how much charge, how long, and by when.

import { type Asked, command, optional } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { plannedOf, timedCharge } from '../../src/charging/setting/timed-charge.ts'
import { simulateDischarge } from '../../src/charging/simulation/discharge.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import { socAt } from '../../src/charging/things/curve.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import { type Level, startOf, storageVoltage_V } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { largestStep_A } from '../../src/charging/things/steps.ts'
import { type StorageMove, storageMove } from '../../src/charging/upkeep/storage.ts'
import {
  cellsKind,
  chargerKind,
  countKind,
  currentKind,
  packKind,
  powerKind,
  stateKind,
  temperatureKind,
} from '../../src/language/kinds/values.ts'
import { ofCharge, packOrCell } from '../shared/charging.ts'

const takes = {
  pack: optional(packKind),
  count: optional(countKind),
  chemistry: optional(cellsKind),
  from: optional(stateKind),
  charger: optional(chargerKind),
  discharge: optional(currentKind),
  power: optional(powerKind),
  temperature: optional(temperatureKind),
  apart: ofCharge.apart,
}

const storageLevel = { kind: 'named', name: 'storage' } as const
const acts = { charge: 'charge', discharge: 'drain', stay: 'store' } as const
const moveOf = (pack: Pack, from: Level, house: HouseLimits): StorageMove =>
  storageMove(pack, startOf(from, pack.chemistry, house), house)

export const storage = command({
  name: 'storage',
  shelf: 'care storage',
  takes,
  examples: [
    'storage pack: 4S 1500 LiPo from: 4.2V per cell discharge: 1A power: 10W',
    'storage pack: 4S 1500 LiPo count: 3 from: full power: 40W',
    'storage pack: 3S 720 LiHV from: 3.6V per cell charger: 0.3/0.8/1.5/3A',
    'storage pack: 2S 2600 Li-ion from: full',
    'storage chemistry: 3S LiPo',
  ],
  situation: (asked, { house }) => {
    const pack = packOrCell(asked.pack, asked.chemistry, 'storage chemistry: 3S LiPo')
    const { from, temperature, charger, discharge, apart } = asked
    const act = from === undefined ? 'store' : acts[moveOf(pack, from, house).way]
    const told = { pack, from, temperature_C: temperature, apart_V: apart, kindOnly: asked.pack === undefined }
    switch (act) {
      case 'charge':
        return { ...told, act, charger, to: storageLevel }
      case 'drain':
        return { ...told, act, current_A: discharge }
      case 'store':
        return { ...told, act }
    }
  },
  compute: (permit, asked) => {
    const { pack, house, from, kindOnly = false } = permit.situation
    const storage_V = storageVoltage_V(pack.chemistry, house)
    const level = { storage_V, soc: socAt(pack.chemistry, storage_V), series: pack.series, kindOnly }
    if (from === undefined) return { way: 'unknown' as const, ...level }
    const move = moveOf(pack, from, house)
    if (kindOnly && move.way !== 'stay')
      return { way: move.way === 'charge' ? ('up' as const) : ('down' as const), ...level }
    switch (move.way) {
      case 'stay':
        return { way: move.way, ...level, move }
      case 'charge': {
        const timed = timedCharge(permit)
        const { count = 1 } = asked
        return {
          way: move.way,
          ...level,
          move,
          timed,
          inAll_s: count > 1 ? count * timed.charge.duration_s : undefined,
        }
      }
      case 'discharge':
        return { way: move.way, ...level, move, ...drained(permit, move, asked) }
    }
  },
  planned: result => {
    switch (result.way) {
      case 'charge':
        return plannedOf(result.timed)
      case 'discharge':
        return { set_A: result.current_A, takes_s: result.time_s.high, underLoad_V: result.run.lowestPerCell_V }
      default:
        return {}
    }
  },
  figures: ({ storage_V, soc, series, kindOnly, ...result }) => {
    const move = 'move' in result ? result.move : undefined
    const timed = result.way === 'charge' ? result.timed : undefined
    const drained = result.way === 'discharge' ? result : undefined
    const inAll_s = drained?.inAll_s ?? (result.way === 'charge' ? result.inAll_s : undefined)
    return [
      figure.perCell('storagePerCell', storage_V),
      figure.percent('storageCharge', soc),
      figure.voltage('storagePack', move || series > 1 ? storage_V * series : undefined),
      figure.duration('totalTime', inAll_s),
      figure.capacity('chargeMoved', kindOnly ? undefined : move?.moved_Ah),
      figure.duration('chargeTime', timed?.charge.duration_s, timed?.time_s),
      figure.current('setCurrent', timed?.current_A),
      figure.energy('energyIn', timed?.charge.energy_Wh),
      figure.duration('dischargeTime', drained?.run.duration_s, drained?.time_s),
      figure.current('dischargeCurrent', drained?.current_A),
      figure.energy('energyOut', drained?.run.energy_Wh),
      figure.perCell('lowestPerCell', drained?.run.lowestPerCell_V),
    ]
  },
})

/** A current that was not asked for is a gentle one: half as much, and half again, where the cells would sink too far. */
function drained(
  { situation: { pack, temperature_C, current_A: asked_A } }: Permit,
  { fromSoc, toSoc }: StorageMove,
  { power, charger, count = 1 }: Asked<typeof takes>,
) {
  // The watts of a load are for all that hang on it at once; without them packs take turns.
  const power_W = power === undefined ? undefined : power / count
  const runAt = (current_A: number) => ({
    current_A,
    run: simulateDischarge({ pack, fromSoc, toSoc, current_A, power_W, temperature_C }),
  })
  // What a charger takes out is never more than what it puts in.
  const gentle_A = Math.min(1, pack.capacity_Ah, charger ? largestStep_A(charger.currents) : Number.POSITIVE_INFINITY)
  const tried = asked_A === undefined ? [1, 0.5, 0.25].map(share => runAt(gentle_A * share)) : [runAt(asked_A)]
  const holds = tried.find(({ run }) => run.lowestPerCell_V >= pack.chemistry.loadFloor_V.value)
  const { current_A, run } = holds ?? (tried.at(-1) as ReturnType<typeof runAt>)
  const spread = pack.chemistry.capacitySpread.value
  const inAll_s = count > 1 ? run.duration_s * (power === undefined ? count : 1) : undefined
  return {
    current_A,
    run,
    power_W,
    inAll_s,
    time_s: { low: run.duration_s * (1 - spread), high: run.duration_s * (1 + spread) },
  }
}
