// Packs on one parallel board: may they go together, what flows between them, and what to set.

import { type Asked, command, optional, required } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { boundsOf } from '../../src/charging/setting/bounds.ts'
import { settingAsAsked } from '../../src/charging/setting/setting.ts'
import { heldBelow, roomFor } from '../../src/charging/setting/shared-charger.ts'
import { plannedOf, timedCharge } from '../../src/charging/setting/timed-charge.ts'
import type { BesidePack, Told } from '../../src/charging/situation/situation.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { boardOf, boardTold, type Flow } from '../../src/charging/upkeep/parallel.ts'
import { attempt } from '../../src/ground/problem.ts'
import { sessionPacksKind } from '../../src/language/kinds/session-kinds.ts'
import { chargerKind, countKind, currentKind, sourceKind } from '../../src/language/kinds/values.ts'
import { currentOn } from '../shared/charging.ts'
import { mixedCounts } from '../shared/problems.words.ts'

/** Mixed cell counts are refused before it is asked what else the packs are. */
const boardPacksKind: typeof sessionPacksKind = {
  ...sessionPacksKind,
  read: (text, earlier) => {
    const read = attempt(() => sessionPacksKind.read(text, earlier))
    if (read) return read
    const counts = new Set(
      [...text.matchAll(/(?<![\p{L}\d.,])(\d{1,2}) ?s(?![\p{L}])/giu)].map(([, count]) => `${count}S`),
    )
    if (counts.size > 1) throw mixedCounts([...counts])
    return sessionPacksKind.read(text, earlier)
  },
}

const takes = {
  packs: required(boardPacksKind),
  charger: optional(chargerKind),
  source: optional(sourceKind),
  places: optional(countKind),
  boards: optional(countKind),
  current: optional(currentKind),
}

type AskedBoard = Asked<typeof takes>

/** One pack on a charger: how many of its like that charger takes at once. */
const seeksCount = ({ packs, charger }: AskedBoard): boolean =>
  charger !== undefined && packs.length === 1 && packs[0]?.count === 1

/** Every pack that was named, one by one. */
const named = ({ packs }: AskedBoard): readonly BesidePack[] =>
  packs.flatMap(({ count, item }) => Array.from({ length: count }, () => item))

/** More boards hold. */
const mostPlaces = 60

/** The board that is asked about: of several rounds the first, and where their number is sought as many as the charger takes. */
function boardAsked(asked: AskedBoard, house: HouseLimits): Told & { readonly pack: Pack } {
  const { charger, source, current, places = mostPlaces } = asked
  const packs = named(asked)
  const set = (wanted_A: number | undefined) => ({ current_A: wanted_A && currentOn(charger, wanted_A) })
  if (!seeksCount(asked)) return { ...tellBoard(packs.slice(0, places), asked, house), ...set(current) }
  const [one] = packs as [BesidePack]
  const around = { house, dangers: [], doubts: [] }
  const bounds = boundsOf({ ...around, act: 'charge', pack: one.pack, charger, source })
  const each_A = current ?? bounds.wanted_A
  const count = Math.min(places, Math.max(2, roomFor(bounds, each_A)?.count ?? 2))
  const alike = Array.from({ length: count }, () => one)
  return { ...tellBoard(alike, asked, house), ...set(count * each_A) }
}

const tellBoard = (packs: readonly BesidePack[], { charger, source }: AskedBoard, house: HouseLimits) => ({
  ...boardTold(packs as unknown as [BesidePack], charger, house),
  source,
})

export const parallel = command({
  name: 'parallel',
  shelf: 'charge parallel',
  takes,
  examples: [
    'parallel packs: 2x 3S 720 LiHV at 3.78V per cell; 3S 720 LiHV at 3.74V per cell charger: 0.3/0.8/1.5/3A 60W',
    'parallel packs: 4S 1500 LiPo 4mΩ at 3.9V per cell; 4S 1300 LiPo 5mΩ at 3.7V per cell',
    'parallel packs: 3S 850 LiPo at 3.8V per cell; 4S 850 LiPo at 3.8V per cell',
    'parallel packs: 6x 4S 1100 LiPo charger: 0.1-10A by 0.1 100W current: 1C',
    'parallel packs: 6S 1050 LiPo charger: 0.1-12A by 0.1 180W current: 1C',
  ],
  situation: (asked, { house }) => boardAsked(asked, house),
  compute: (permit, asked) => {
    const { pack: whole, board = [], current_A, charger } = permit.situation
    const set = current_A === undefined ? undefined : settingAsAsked(permit, current_A)
    const timed = { ...timedCharge(permit, { current_A: set?.current_A }), ...set }
    const setting = set ?? timed.setting
    const count = board.length
    const isSought = seeksCount(asked)
    const wanted_A = asked.current === undefined ? setting.wanted_A : asked.current * (isSought ? count : 1)
    return {
      ...boardOf(permit),
      ...timed,
      setting,
      whole,
      count,
      each_A: timed.current_A / count,
      power_W: timed.current_A * setting.cutoffPack_V,
      wanted_A,
      held: heldBelow(setting, wanted_A),
      room: charger && roomFor(setting, wanted_A / count),
      isSought,
      rounds: isSought ? 1 : Math.ceil(named(asked).length / count / (asked.boards ?? 1)),
    }
  },
  planned: ({ flowShare, carried, ...timed }) => ({ ...plannedOf(timed), carried, flowShare }),
  figures: ({ apart_V, flows, setting, whole, charge, time_s, current_A, rate_C, ...shared }) => {
    const largest = (key: Flowing, of: (flow: Flow) => number) =>
      flows.length === 0 ? undefined : figure.current(key, Math.max(...flows.map(flow => Math.abs(of(flow)))))
    const { room, rounds } = shared
    return [
      shared.isSought ? figure.count('atOnce', Math.min(shared.count, room?.count ?? 0)) : undefined,
      apart_V === undefined ? undefined : figure.perCell('apart', apart_V),
      largest('equalisingCurrent', flow => flow.atOnce_A),
      largest('equalisingCurrentMinute', flow => flow.firstMinute_A),
      largest('equalisingCurrentLater', flow => flow.later_A),
      figure.current('setCurrent', current_A),
      figure.current('eachCurrent', shared.each_A),
      figure.power('boardPower', shared.power_W),
      figure.duration('chargeTime', charge.duration_s, time_s),
      rounds === 1
        ? undefined
        : figure.duration('totalTime', rounds * charge.duration_s, {
            low: rounds * time_s.low,
            high: rounds * time_s.high,
          }),
      figure.perCell('cutoffPerCell', setting.cutoff.perCell_V),
      figure.voltage('cutoffPack', setting.cutoffPack_V),
      figure.capacity('boardCapacity', whole.capacity_Ah),
      figure.rate('cRate', rate_C),
    ]
  },
})

type Flowing = 'equalisingCurrent' | 'equalisingCurrentMinute' | 'equalisingCurrentLater'
