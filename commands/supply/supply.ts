// What a supply can give this charger, by cell count; or the smallest supply that carries a setting, or a charger flat out.

import { command } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { settingFor } from '../../src/charging/setting/setting.ts'
import { timedCharge } from '../../src/charging/setting/timed-charge.ts'
import { usable_Wh } from '../../src/charging/simulation/supply-run.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import { demandOf } from '../../src/charging/sources/load.ts'
import { carriedAlone, neededFor, suppliedTo, suppliesFor } from '../../src/charging/sources/supply.ts'
import { plugShare } from '../../src/charging/things/practice.ts'
import type { Source } from '../../src/charging/things/source.ts'
import { type AskedSupply, cellsOf, loadOf, takes, told } from './supply-asked.ts'
import { nothingToSupply } from './supply-problems.words.ts'

/** A lead-acid battery and a pack give the most of what they hold where little is taken. */
const gentleShare = 0.25

const supplied = (permit: Permit, asked: AskedSupply, source: Source) => {
  const { pack, current } = asked
  const { feed: fed, carried } = suppliedTo(permit)
  const load = loadOf(asked)
  // What chargers take at the plug needs no supply between.
  const isAtPlug = asked.draws !== undefined && source.kind === 'watts' && source.of === 'mains'
  const feed = isAtPlug ? { ...fed, power_W: source.power_W * plugShare.value } : fed
  const cells = cellsOf(asked)
  const isSetting = pack !== undefined || (cells !== undefined && current !== undefined)
  const demand = isSetting ? demandOf(permit, load.count) : undefined
  const taken_W = demand?.input_W ?? load.flatOut_W
  return {
    kind: 'supplied' as const,
    feed,
    carried:
      !load.isAlike || asked.draws
        ? []
        : cells === undefined
          ? carried
          : carried.filter(({ series }) => series === cells),
    load,
    demand,
    /** How many such charges at once, or chargers flat out, it carries, where nobody said how many there are. */
    mostAtOnce:
      taken_W === undefined || asked.count !== undefined || load.count > 1
        ? undefined
        : Math.floor(feed.power_W / taken_W + 1e-9),
    usable_Wh: usable_Wh(source, feed.store, Math.min(taken_W ?? feed.power_W * gentleShare, feed.power_W)),
    taken_W,
    setting: pack && settingFor(permit),
    timed: pack && timedCharge(permit, { current_A: permit.situation.current_A }),
    permit,
  }
}

const needed = (permit: Permit, asked: AskedSupply) => {
  const { pack, voltage: voltage_V } = asked
  const found = neededFor(permit, { voltage_V, count: loadOf(asked).count, lead: permit.situation.lead })
  const timed = pack && timedCharge(permit, { current_A: found.current_A })
  return { kind: 'needed' as const, ...found, timed, permit }
}

/** What hangs on mains needs no supply, but a generator or an inverter that is large enough. */
const ofPlug = (input_W: number) => ({ input_W, usb: undefined, benches: [], generator_W: input_W / plugShare.value })

const flatOut = (permit: Permit, input_W: number, asked: AskedSupply) => {
  const load = loadOf(asked)
  const cells = cellsOf(asked) ?? load.charger?.maxSeries
  return {
    kind: 'flat out' as const,
    ...(asked.draws && !asked.voltage
      ? ofPlug(input_W)
      : suppliesFor(input_W, load.charger, {
          voltage_V: asked.voltage,
          count: load.count,
          lead: permit.situation.lead,
        })),
    load,
    carried: cells === undefined || !load.isAlike ? undefined : carriedAlone(permit, cells),
    setting: undefined,
    current_A: undefined,
    timed: undefined,
    permit,
  }
}

type Given = Omit<ReturnType<typeof supplied>, 'timed'>
type Sought = Omit<ReturnType<typeof needed>, 'timed'> | Omit<ReturnType<typeof flatOut>, 'timed'>

export const supply = command({
  name: 'supply',
  shelf: 'supply charger',
  takes,
  anyOf: [['source', 'pack', 'charger', 'current', 'draws']],
  // What a charger or its source gives so many cells.
  alone: ({ source, charger, chemistry = '', pack }, instead) =>
    (instead === 'current' ||
      (instead === 'percent' && charger !== undefined) ||
      (instead === 'source' && source !== undefined)) &&
    pack === undefined &&
    /^\d+S|\dS\b/.test(`${(source ?? charger) ? chemistry : ''} ${charger}`),
  examples: [
    'supply source: PD 65W charger: 0.1-10A by 0.1 200W 6S 10-30V',
    'supply source: PD 100W charger: 0.3/0.8/1.5/3A 60W 1-5S 10-26V cable: 3A',
    'supply pack: 4S 1500 LiPo current: 2A charger: 0.1-10A by 0.1 200W 6S 10-30V',
    'supply charger: 0.1-10A by 0.1 200W 6S 10-30V count: 2 voltage: 24V',
  ],
  situation: (asked, { house }) => told(asked, house),
  compute: (permit, asked) => {
    const { source, pack, chemistry, current } = asked
    if (source) return supplied(permit, asked, source)
    if (pack || (chemistry?.series !== undefined && current !== undefined)) return needed(permit, asked)
    const { flatOut_W } = loadOf(asked)
    if (flatOut_W !== undefined) return flatOut(permit, flatOut_W, asked)
    throw nothingToSupply()
  },
  planned: ({ timed, ...result }) => ({
    takes_s: timed?.time_s.high,
    warmest_C: timed?.warmest_C,
    carried: timed?.carried,
    set_A: result.kind === 'supplied' ? result.setting?.current_A : result.current_A,
    input_A: drawn_A(result),
  }),
  figures: result => (result.kind === 'supplied' ? suppliedFigures(result) : neededFigures(result)),
})

/** Of the source; of one that is looked for at the supply that is advised, the USB one or the only one. */
export function drawn_A(result: Given | Sought): number | undefined {
  if (result.kind === 'supplied') return result.setting?.input_A ?? result.feed.current_A
  const { input_W, usb, benches } = result
  return usb ? input_W / usb.offer.voltage_V : benches.length === 1 ? benches[0]?.drawn_A : undefined
}

const suppliedFigures = ({ feed, carried, taken_W, mostAtOnce, ...held }: Given) => [
  figure.power('supplyPower', feed.power_W),
  figure.voltage('supplyVoltage', feed.lowest_V),
  figure.current('supplyCurrent', feed.current_A),
  figure.power('inputPower', taken_W),
  mostAtOnce === undefined ? undefined : figure.count('chargerCount', mostAtOnce),
  figure.energy('usable', held.usable_Wh),
  figure.duration('lasts', held.usable_Wh && taken_W && (held.usable_Wh * 3600) / Math.min(taken_W, feed.power_W)),
  ...carried.map(({ series, current_A }) => figure.current(`current${series}S`, current_A)),
]

const neededFigures = ({ setting, current_A, input_W, usb, benches, ...rest }: Sought) => [
  figure.current('setCurrent', current_A),
  'carried' in rest && rest.carried
    ? figure.current(`current${rest.carried.series}S`, rest.carried.current_A)
    : undefined,
  figure.voltage('cutoffPack', setting?.cutoffPack_V),
  figure.power('inputPower', input_W),
  figure.power('usbSupply', usb?.supply_W),
  ...benches.map(bench => figure.current('supplyCurrent#V', bench.current_A, undefined, bench.voltage_V)),
]
