// The headline of an answer about a source: how many packs, how long, and where to stop.

import { countedPacks } from '../../src/charging/simulation/supply-run.ts'
import type { SourcePlan } from '../../src/charging/sources/source-plan.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Source } from '../../src/charging/things/source.ts'
import type { Show } from '../../src/ground/show.ts'
import { careWords, heldWords } from '../shared/setting-words.ts'

export interface PlanAsked {
  readonly pack: Pack
  readonly source: Source
  readonly count?: number
}

export function planWords(plan: SourcePlan, asked: PlanAsked, show: Show): string {
  const { setting } = plan
  const set = `Set ${show.current(setting.current_A)} and ${show.perCell(setting.cutoff.perCell_V)} per cell.`
  if (plan.most === 0) {
    return 'No: this source does not carry one whole charge above its floor. Use a larger source, a smaller pack or a lower target.'
  }
  const words = [verdictWords(plan, asked, show), set, heldWords(setting.bound), stopWords(plan, asked, show)]
  return [...words, ...careWords(setting, setting, asked.pack, show)].filter(Boolean).join(' ')
}

function verdictWords({ most, planned, enough, each }: SourcePlan, { count }: PlanAsked, show: Show): string {
  const inTurn = planned > 1 ? ', one after another,' : ''
  const one = show.duration(each.charge.duration_s)
  const all = show.duration(planned * each.charge.duration_s)
  if (most === undefined) {
    return count === undefined
      ? `Yes: it carries one pack after another, about ${one} each.`
      : `Yes: it carries ${count === 1 ? 'the pack' : `all ${count}`}${inTurn} in about ${all}.`
  }
  const atMost = most >= countedPacks ? `at least ${most}` : String(most)
  if (count === undefined) return `It charges ${atMost} ${packs(most)}${inTurn} in about ${all}.`
  return enough
    ? `Yes: it charges ${count} ${packs(count)}${inTurn} in about ${all}; ${atMost} would be the most.`
    : `No: it charges ${most} of the ${count}${inTurn} in about ${all}.`
}

const packs = (count: number) => (count === 1 ? 'pack' : 'packs')

/** Where to stop, for a source that can be harmed by being drained. */
function stopWords({ setting }: SourcePlan, { source }: PlanAsked, show: Show): string {
  const store = setting.feed?.store
  if (!store) return ''
  return source.kind === 'battery'
    ? `Stop the source at ${show.voltage(store.loadFloor_V)} under load (${show.perCell(store.loadFloor_V / source.pack.series)} per cell).`
    : `Stop when the starter battery rests at ${show.voltage(store.restFloor_V)}.`
}
