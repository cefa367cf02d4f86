// Bringing a pack to storage: which way, how much charge, how long, and by when.

import { defineCommand, type Inputs, optional } from '../../src/assistant/old-command.ts'
import type { Answer } from '../../src/assistant/reply.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import { careCautions } from '../../src/cautions/pack-care.ts'
import { whyUnfit } from '../../src/charging/setting/fitness.ts'
import { adviseSetting } from '../../src/charging/setting/old-setting.ts'
import { timedCharge } from '../../src/charging/setting/old-timed-charge.ts'
import { type Discharge, simulateDischarge } from '../../src/charging/simulation/discharge.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { batterySourceRate_C } from '../../src/charging/things/practice.ts'
import {
  type StorageMove,
  storageMove,
  storageTolerance_V,
  storeWithin_s,
} from '../../src/charging/upkeep/storage.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { Show } from '../../src/ground/show.ts'
import {
  cellsKind,
  chargerKind,
  currentKind,
  packKind,
  powerKind,
  stateKind,
} from '../../src/language/kinds/values.ts'
import type { Level } from '../../src/language/things/state.ts'
import { cellTemperature } from '../shared/charge-options.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp } from '../shared/follow-up.ts'
import { levelsOf } from '../shared/levels.ts'
import { packOrCell } from '../shared/one-cell.ts'
import { refusedAnswer } from '../shared/refused.ts'
import { careWords } from '../shared/setting-words.ts'
import { cite, settingWorking } from '../shared/working.ts'
import { storageLevel } from './storage-level.ts'

const options = {
  pack: optional(packKind, { description: 'cells, capacity and chemistry', phrase: text => text }),
  chemistry: optional(cellsKind, {
    description: 'where only the storage voltage is asked for',
    phrase: text => text,
  }),
  from: optional(stateKind, { description: 'where the pack stands now' }),
  charger: optional(chargerKind, {
    description: 'for a pack that must be charged up',
    phrase: text => `on a charger with ${text}`,
  }),
  discharge: optional(currentKind, {
    description: 'current of the load or discharger; 1C up to 1 A when not said',
    phrase: text => `discharged at ${text}`,
  }),
  power: optional(powerKind, {
    description: 'most that the load or discharger can turn to heat',
    phrase: text => `with ${text} at most`,
  }),
  temperature: cellTemperature,
}

/** The pack and where it stands are known. */
type Asked = Omit<Inputs<typeof options>, 'pack' | 'from' | 'chemistry'> & {
  readonly pack: Pack
  readonly from: Level
}

export const storage = defineCommand({
  name: 'storage',
  summary: 'Bring a pack to storage: charge or discharge, how much, how long, by when.',
  options,
  examples: [
    'storage pack: 4S 1500 LiPo from: 4.2V per cell discharge: 1A power: 10W',
    'storage pack: 3S 720 LiHV from: 3.6V per cell charger: 0.5/1/2/4A',
    'storage pack: 2S 2600 Li-ion from: full',
    'storage chemistry: 3S LiPo',
  ],
  meantBy: [
    ['pack', 'to storage'],
    ['pack', 'to storage', 'level'],
    ['cells', 'to storage'],
    ['chemistry', 'to storage'],
  ],
  plainWords: [
    'away',
    'discharge',
    'store',
    'storage voltage',
    'storage level',
    'storage for',
    'what is storage',
    'put back to storage',
    'discharge',
    'put away',
    'storage charge',
    'into storage',
  ],
  answer: ({ pack: named, from: start, chemistry: cells, ...given }, { house, show }) => {
    const pack = packOrCell(named, cells, 'storage chemistry: 3S LiPo')
    if (start === undefined) return storageLevel(pack, house, show)
    if (!named) throw capacityMissing(pack)
    const inputs: Asked = { ...given, pack, from: start }
    const { from, restPerCell_V } = levelsOf(pack, house, inputs.from)
    const known = { pack, restPerCell_V }
    const unfit = whyUnfit(known)
    if (unfit) return refusedAnswer(unfit, known, show)
    const move = storageMove(pack, from, house)
    if (move.way === 'charge') return chargeUp(inputs, move, house, show)
    return move.way === 'stay' ? stay(inputs, move, show) : discharge(inputs, move, show)
  },
})

function capacityMissing({ series, chemistry }: Pack): Problem {
  return new Problem({
    what: 'How much and how long hangs on the capacity of the pack.',
    expected: 'the pack with its capacity',
    example: `storage pack: ${series}S 1500 ${chemistry.name} from: 4V per cell`,
  })
}

/** What every answer on storage rests on. */
function storageWorking(
  { pack }: Asked,
  { storage_V, rest_V, fromSoc, toSoc, moved_Ah }: StorageMove,
  show: Show,
): string[] {
  const { storage_V: own_V, curve } = pack.chemistry
  const whose = storage_V === own_V.value ? cite(own_V) : 'the rules of this house'
  return [
    `Storage: ${show.perCell(storage_V)} per cell (${whose}).`,
    `By the curve at rest ${show.perCell(rest_V)} is ${show.percent(fromSoc)} and ${show.perCell(storage_V)} is ${show.percent(toSoc)} (${cite(curve)}): ${show.percent(Math.abs(fromSoc - toSoc))} × ${show.capacity(pack.capacity_Ah)} = ${show.capacity(moved_Ah)}.`,
    `By when: ${cite(storeWithin_s)}.`,
  ]
}

function levelFigures({ pack }: Asked, { storage_V, moved_Ah }: StorageMove, show: Show) {
  const figure = figuresIn(show)
  return [
    figure.perCell('storagePerCell', 'storage per cell', storage_V),
    figure.voltage('storagePack', 'storage of the pack', storage_V * pack.series),
    figure.capacity('chargeMoved', 'charge to move', moved_Ah),
  ]
}

function stay(inputs: Asked, move: StorageMove, show: Show): Answer {
  return {
    verdict: 'go',
    headline: `Leave it as it is: ${show.perCell(move.rest_V)} per cell is within ${show.perCell(storageTolerance_V.value)} of storage, ${show.perCell(move.storage_V)}.`,
    figures: levelFigures(inputs, move, show),
    working: [...storageWorking(inputs, move, show), `Near enough: ${cite(storageTolerance_V)}.`],
    cautions: cautionsFor({ pack: inputs.pack }),
  }
}

function chargeUp(inputs: Asked, move: StorageMove, house: HouseLimits, show: Show): Answer {
  const { pack, charger, temperature } = inputs
  const { from, target, restPerCell_V } = levelsOf(pack, house, inputs.from, {
    kind: 'named',
    name: 'storage',
  })
  const known = {
    pack,
    temperature_C: temperature,
    restPerCell_V,
  }
  const request = { ...known, charger, target, limits: house, from }
  const setting = adviseSetting(request)
  if ('refusal' in setting) return refusedAnswer(setting, known, show)
  const { charge, time_s, verdict, ...timed } = timedCharge(
    { ...request, current_A: setting.current_A },
    setting,
  )
  const figure = figuresIn(show)
  return {
    verdict,
    headline: [
      `Charge it up: set ${show.current(setting.current_A)} and ${show.perCell(setting.cutoff.perCell_V)} per cell. It takes about ${show.capacity(charge.charge_Ah)} and ${show.duration(charge.duration_s)} (${show.duration(time_s.low)} to ${show.duration(time_s.high)}). Do it within two days.`,
      ...careWords(timed, setting, pack, show),
    ].join(' '),
    figures: [
      ...levelFigures(inputs, move, show),
      figure.duration('chargeTime', 'time', charge.duration_s, time_s),
      figure.current('setCurrent', 'current to set', setting.current_A),
      figure.energy('energyIn', 'energy in', charge.energy_Wh),
    ],
    working: [...storageWorking(inputs, move, show), ...settingWorking(setting, pack, show)],
    cautions: cautionsFor({ ...known, current_A: setting.current_A }),
    followUps: [
      followUp('To full instead', 'time', { pack: packKind.write(pack), from: stateKind.write(inputs.from) }),
    ],
  }
}

/** The current that is taken: the asked one, or a gentle one, and never above what a pack may give. */
function loadCurrent_A({ discharge }: Asked, { capacity_Ah }: Pack): number {
  const most_A = batterySourceRate_C.value * capacity_Ah
  return Math.min(discharge ?? Math.min(1, capacity_Ah), most_A)
}

function discharge(inputs: Asked, move: StorageMove, show: Show): Answer {
  const { pack, power, temperature } = inputs
  const current_A = loadCurrent_A(inputs, pack)
  const run = simulateDischarge({
    pack,
    fromSoc: move.fromSoc,
    toSoc: move.toSoc,
    current_A,
    power_W: power,
    temperature_C: temperature,
  })
  const spread = pack.chemistry.capacitySpread.value
  const band = { low: run.duration_s * (1 - spread), high: run.duration_s * (1 + spread) }
  const figure = figuresIn(show)
  return {
    verdict: 'go',
    headline: `Discharge it: take out about ${show.capacity(run.charge_Ah)} at ${show.current(current_A)}${run.heldByPower ? ` or ${show.power(power ?? 0)}, whichever is less` : ''}; that takes about ${show.duration(run.duration_s)} (${show.duration(band.low)} to ${show.duration(band.high)}). Stop where it rests at ${show.perCell(move.storage_V)} per cell (${show.voltage(move.storage_V * pack.series)} for ${pack.series}S). Do it today, within two days at the latest; a flight does it as well.`,
    figures: [
      ...levelFigures(inputs, move, show),
      figure.duration('dischargeTime', 'time', run.duration_s, band),
      figure.current('dischargeCurrent', 'current', current_A),
      figure.energy('energyOut', 'energy out', run.energy_Wh),
      figure.perCell('lowestPerCell', 'a cell under the load at the end', run.lowestPerCell_V),
    ],
    working: [...storageWorking(inputs, move, show), ...dischargeWorking(inputs, run, current_A, show)],
    cautions: careCautions('discharge', {
      pack,
      temperature_C: temperature,
    }),
    assumed: dischargeAssumed(inputs, current_A, show),
  }
}

function dischargeWorking({ pack, power }: Asked, run: Discharge, current_A: number, show: Show): string[] {
  const { capacitySpread } = pack.chemistry
  return [
    `Time: ${show.capacity(run.charge_Ah)} ÷ ${show.current(current_A)}${run.heldByPower ? `, slower where ${show.power(power ?? 0)} holds the current down` : ''}; ±${show.percent(capacitySpread.value)} for the spread of real packs (${cite(capacitySpread)}).`,
    `Under the load a cell reads about ${show.perCell(run.lowestPerCell_V)} at the end and climbs back at rest: a discharger that stops by volts stops early; run it again after a rest.`,
  ]
}

function dischargeAssumed({ pack, discharge }: Asked, current_A: number, show: Show): string[] {
  if (discharge === undefined) return [`discharged at ${show.current(current_A)}`]
  return current_A < discharge
    ? [
        `held to ${show.rate(batterySourceRate_C.value)}, ${show.current(current_A)} for ${show.capacity(pack.capacity_Ah)} (${cite(batterySourceRate_C)})`,
      ]
    : []
}
