// How long a charge takes, from where the pack stands to where it is to go.

import { type Asked, command, optional } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { plannedOf, type TimedCharge, timedCharge } from '../../src/charging/setting/timed-charge.ts'
import type { Charge, StageKind } from '../../src/charging/simulation/charge.ts'
import { socAfter } from '../../src/charging/simulation/progress.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { capacityKind, clockKind, currentKind, durationKind, resistanceKind } from '../../src/language/kinds/values.ts'
import { lengthBetween_s } from '../../src/language/quantities/clock.ts'
import { byLog, recallFromLog } from '../log/log-recall.ts'
import { chargeTold, currentOn, ofCharge, stopFigures } from '../shared/charging.ts'
import { ofLead } from '../shared/own-lead.ts'
import { endsFirst } from '../shared/problems.words.ts'
import { endKind } from './end-kind.ts'

const { pack, charger, source, from, to, temperature, apart } = ofCharge
const takes = {
  pack,
  current: optional(currentKind),
  or: optional(currentKind),
  charger,
  source,
  ...ofLead,
  from,
  to,
  until: optional(endKind),
  resistance: optional(resistanceKind),
  capacity: optional(capacityKind),
  temperature,
  apart,
  balance: optional(currentKind),
  within: optional(durationKind),
  start: optional(clockKind),
  ready: optional(clockKind),
  ...byLog,
}

/** The currents that are asked about, as the charger can be set to them. */
const currentsOf = ({ charger: on, current, or }: Asked<typeof takes>): readonly number[] =>
  [current, or].filter(asked_A => asked_A !== undefined).map(asked_A => currentOn(on, asked_A))

/** A resistance given apart counts as one on the pack; of two currents the larger is judged. */
const asTold = ({ resistance, ...asked }: Asked<typeof takes>) => {
  const currents_A = currentsOf(asked)
  return {
    ...asked,
    pack: { ...asked.pack, cellResistance_ohm: resistance ?? asked.pack.cellResistance_ohm },
    current: currents_A.length > 0 ? Math.max(...currents_A) : undefined,
  }
}

export const time = command({
  name: 'time',
  shelf: 'charge time',
  takes,
  examples: [
    'time pack: 3S 720 LiHV current: 1A from: 3.7V per cell to: full',
    'time pack: 6S 1300 LiPo charger: 0.1-10A by 0.1 80W from: 20% to: storage',
    'time pack: 2S 2600 Li-ion current: 1.3A from: 10% resistance: 30mΩ',
    'time pack: 4S 1500 LiPo current: 1.5A or: 3A',
    'time pack: 4S 1500 LiPo current: 1.5A from: 3.7V per cell start: 18:30 ready: 19:15',
  ],
  tellsTime: true,
  recall: recallFromLog,
  situation: asked => chargeTold(asTold(asked)),
  compute: (permit, asked, { now, speaksFirst }) => {
    const { until, capacity, balance } = asked
    const details = { current_A: currentsOf(asked)[0], ...until, measuredCapacity_Ah: capacity, balance_A: balance }
    const timed = timedCharge(permit, details)
    const end_A = until && 'termination_A' in until ? until.termination_A : 0
    if (end_A >= timed.current_A) throw endsFirst(end_A, timed.current_A)
    const other_A = currentsOf(asked)[1]
    const other = other_A === undefined ? undefined : timedCharge(permit, { ...details, current_A: other_A })
    const within_s = asked.within ?? (asked.start && asked.ready && lengthBetween_s(asked.start, asked.ready))
    const within = within_s === undefined ? undefined : progressAt(within_s, timed.charge, asked.pack)
    const isOpen = asked.current === undefined && asked.charger === undefined && within?.soc === undefined
    const enough_A =
      within_s !== undefined && isOpen
        ? leastFor(within_s, timed, asked.pack, current_A => timedCharge(permit, { ...details, current_A }))
        : undefined
    return { ...timed, measuredCapacity_Ah: capacity, other, within, enough_A, now, speaksFirst }
  },
  planned: ({ other, ...timed }) => {
    const harder = other && other.current_A > timed.current_A ? other : timed
    return {
      ...plannedOf(harder),
      carried: harder.carried,
      takes_s: Math.max(timed.time_s.high, other?.time_s.high ?? 0),
    }
  },
  figures: timed => [...timeFigures(timed), ...stopFigures(timed)],
})

interface Progress {
  readonly length_s: number
  /** How full it is then, and what went in; absent where the charge is over by then. */
  readonly soc: number | undefined
  readonly charge_Ah: number | undefined
}

function progressAt(length_s: number, charge: Charge, { capacity_Ah }: Pack): Progress {
  const soc = socAfter(charge, length_s)
  return { length_s, soc, charge_Ah: soc && (soc - charge.startSoc) * capacity_Ah }
}

export const stageKeys = {
  precharge: 'prechargeTime',
  'constant current': 'constantCurrentTime',
  'constant power': 'constantPowerTime',
  'constant voltage': 'constantVoltageTime',
  'steps down': 'stepsDownTime',
  balancing: 'balancingTime',
} as const satisfies Record<StageKind, string>

/** Below this a charge takes hours for nothing; and less of a gain is not worth saying. */
const [slowest_C, worth] = [0.2, 0.9]

/** The least current, in A rounded up to 0.05 A, with which the charge is likely over in time; absent where it is nearly the one set. */
function leastFor(
  within_s: number,
  { current_A }: TimedCharge,
  { capacity_Ah }: Pack,
  at: (current_A: number) => TimedCharge,
): number | undefined {
  const isEnough = (amps: number) => at(amps).charge.duration_s <= within_s
  let [low, high] = [slowest_C * capacity_Ah, current_A]
  if (low >= high || !isEnough(high)) return undefined
  if (isEnough(low)) high = low
  while (high - low > 0.02 * capacity_Ah) {
    const middle = (low + high) / 2
    if (isEnough(middle)) high = middle
    else low = middle
  }
  const enough_A = Math.ceil(high * 20) / 20
  return enough_A < worth * current_A ? enough_A : undefined
}

/** Cooler cells are not worth a figure. */
const warm_C = 40

interface Answered extends TimedCharge {
  readonly other: TimedCharge | undefined
  readonly within: Progress | undefined
  readonly enough_A: number | undefined
}

const timeFigures = ({ charge, setting, other, within, enough_A, ...timed }: Answered) => {
  const bands = timed.bands()
  return [
    figure.duration('chargeTime', charge.duration_s, timed.time_s),
    figure.duration('otherTime', other?.charge.duration_s, other?.time_s),
    figure.capacity('chargeWithin', within?.charge_Ah),
    figure.percent('percentWithin', within?.soc),
    figure.current('enoughCurrent', enough_A),
    figure.duration('timeToCutoff', charge.timeToCutoff_s, bands.timeToCutoff_s),
    ...charge.stages.map(({ kind, duration_s }) => figure.duration(stageKeys[kind], duration_s)),
    figure.current('setCurrent', timed.current_A),
    figure.rate('cRate', timed.rate_C),
    figure.perCell('cutoffPerCell', setting.cutoff.perCell_V),
    figure.voltage('cutoffPack', setting.cutoffPack_V),
    figure.capacity('chargeIn', charge.charge_Ah, bands.charge_Ah),
    figure.energy('energyIn', charge.energy_Wh),
    figure.energy('heat', charge.heat_Wh, bands.heat_Wh),
    figure.temperature('warmest', timed.warmest_C > warm_C ? timed.warmest_C : undefined, bands.warmest_C),
    figure.percent('startCharge', charge.startSoc),
    figure.percent('endCharge', charge.endSoc),
    figure.power('peakInputPower', charge.peakPower_W / setting.efficiency),
    figure.current('peakInputCurrent', timed.input_A),
  ]
}
