// Packs on one parallel board: may they go together, what flows between them, and what to set.

import { type Asked, command, optional, required } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { timedCharge } from '../../src/charging/setting/timed-charge.ts'
import type { BesidePack } from '../../src/charging/situation/situation.ts'
import { boardOf, boardTold, type Flow } from '../../src/charging/upkeep/parallel.ts'
import { attempt } from '../../src/ground/problem.ts'
import { sessionPacksKind } from '../../src/language/kinds/session-kinds.ts'
import { chargerKind, currentKind, sourceKind } from '../../src/language/kinds/values.ts'
import { mixedCounts } from './board-problems.words.ts'

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
  current: optional(currentKind),
}

export const parallel = command({
  name: 'parallel',
  takes,
  examples: [
    'parallel packs: 2x 3S 720 LiHV at 3.78V per cell; 3S 720 LiHV at 3.74V per cell charger: 0.3/0.8/1.5/3A 60W',
    'parallel packs: 4S 1500 LiPo 4mΩ at 3.9V per cell; 4S 1300 LiPo 5mΩ at 3.7V per cell',
    'parallel packs: 3S 850 LiPo at 3.8V per cell; 4S 850 LiPo at 3.8V per cell',
  ],
  situation: ({ packs, charger, source, current }: Asked<typeof takes>, { house }: Context) => {
    const beside = packs.flatMap(({ count, item }) => Array.from({ length: count }, () => item))
    return { ...boardTold(beside as unknown as [BesidePack], charger, house), source, current_A: current }
  },
  compute: permit => ({
    ...boardOf(permit),
    ...timedCharge(permit, { current_A: permit.situation.current_A }),
    whole: permit.situation.pack,
  }),
  planned: ({ current_A, input_A, time_s, flowShare, carried }) => ({
    carried,
    set_A: current_A,
    input_A,
    takes_s: time_s.high,
    flowShare,
  }),
  figures: ({ apart_V, flows, setting, whole, charge, time_s, current_A, rate_C }) => {
    const largest = (key: Flowing, of: (flow: Flow) => number) =>
      flows.length === 0 ? undefined : figure.current(key, Math.max(...flows.map(flow => Math.abs(of(flow)))))
    return [
      apart_V === undefined ? undefined : figure.perCell('apart', apart_V),
      largest('equalisingCurrent', flow => flow.atOnce_A),
      largest('equalisingCurrentMinute', flow => flow.firstMinute_A),
      largest('equalisingCurrentLater', flow => flow.later_A),
      figure.current('setCurrent', current_A),
      figure.duration('chargeTime', charge.duration_s, time_s),
      figure.perCell('cutoffPerCell', setting.cutoff.perCell_V),
      figure.voltage('cutoffPack', setting.cutoffPack_V),
      figure.capacity('boardCapacity', whole.capacity_Ah),
      figure.rate('cRate', rate_C),
    ]
  },
})

type Flowing = 'equalisingCurrent' | 'equalisingCurrentMinute' | 'equalisingCurrentLater'
