// The best deal of packs to ports whose hookups are fixed: by going through every way to split the bag.

import {
  type Deal,
  energiesOn,
  energyTolerance_Wh,
  type Hookup,
  type Hookups,
  isBetter,
  lasts_min,
  type Session,
} from './model.ts'
import type { Multisets } from './multisets.ts'

/** For some ports together: the least wait for each choice of packs, and how to deal it. */
interface Table {
  /** By number of the choice, in min; Infinity where the ports cannot charge it. */
  readonly wait_min: Float64Array
  deal(choice: number): Readonly<{ port: number; order: readonly number[] }>[]
}

/**
 * Proven best for these hookups: on one port the shortest charge first gives the least wait whatever it charges,
 * and every split of every choice of packs among the ports is looked at.
 */
export function dealExactly(session: Session, hookups: Hookups, choices: Multisets): Deal {
  const energies = energiesOn(session, hookups)
  const bySource = session.sources.flatMap((budget, source) => {
    const tables = hookups.flatMap((hookup, port) =>
      hookup?.source === source ? [portTable(session, hookup, port, choices)] : [],
    )
    if (tables.length === 0) return []
    const table = tables.reduce((a, b) => merge(a, b, choices))
    return budget.energy_Wh === Number.POSITIVE_INFINITY
      ? table
      : within(budget.energy_Wh, energies[source] as number[], table, choices)
  })
  if (bySource.length === 0) return { ready: 0, wait_min: 0, order: hookups.map(() => []) }
  const all = bySource.reduce((a, b) => merge(a, b, choices))
  const best = bestChoice(all, session.wanted, choices)
  const dealt = all.deal(best)
  return {
    ready: choices.size[best] as number,
    wait_min: all.wait_min[best] as number,
    order: hookups.map((_, port) => dealt.find(part => part.port === port)?.order ?? []),
  }
}

/** One port: the shortest charge first, so that a choice without its longest charge ends before that one. */
function portTable(session: Session, hookup: Hookup, port: number, choices: Multisets): Table {
  const duration_min = hookup.jobs.map(lasts_min)
  const longestFirst = duration_min.map((_, kind) => kind).sort((a, b) => at(duration_min, b) - at(duration_min, a))
  const longestIn = (choice: number): number =>
    longestFirst.find(kind => at(choices.of[choice] as number[], kind) > 0) as number
  const end_min = new Float64Array(choices.count)
  const wait_min = new Float64Array(choices.count)
  for (let choice = 1; choice < choices.count; choice++) {
    const kind = longestIn(choice)
    const rest = choice - at(choices.unit, kind)
    const end = at(end_min, rest) + at(duration_min, kind)
    end_min[choice] = end
    wait_min[choice] = end <= session.deadline_min ? at(wait_min, rest) + end : Number.POSITIVE_INFINITY
  }
  const orderOf = (choice: number): number[] => {
    if (choice === 0) return []
    const kind = longestIn(choice)
    return [...orderOf(choice - at(choices.unit, kind)), kind]
  }
  return { wait_min, deal: choice => [{ port, order: orderOf(choice) }] }
}

function merge(a: Table, b: Table, choices: Multisets): Table {
  const wait_min = new Float64Array(choices.count)
  const taken = new Int32Array(choices.count)
  for (let choice = 0; choice < choices.count; choice++) {
    const parts = choices.partsOf(choice)
    let least = Number.POSITIVE_INFINITY
    for (let i = 0; i < parts.length; i++) {
      const part = parts[i] as number
      const wait = (a.wait_min[choice - part] as number) + (b.wait_min[part] as number)
      if (wait >= least) continue
      least = wait
      taken[choice] = part
    }
    wait_min[choice] = least
  }
  return { wait_min, deal: choice => [...a.deal(choice - at(taken, choice)), ...b.deal(at(taken, choice))] }
}

/** The table without the choices that take more than the source holds. */
function within(energy_Wh: number, perPack_Wh: readonly number[], table: Table, choices: Multisets): Table {
  const wait_min = table.wait_min.map((wait, choice) => {
    const taken_Wh = (choices.of[choice] as number[]).reduce(
      (sum, packs, kind) => sum + packs * at(perPack_Wh, kind),
      0,
    )
    return taken_Wh <= energy_Wh + energyTolerance_Wh ? wait : Number.POSITIVE_INFINITY
  })
  return { ...table, wait_min }
}

function bestChoice({ wait_min }: Table, wanted: number, { size }: Multisets): number {
  let best = 0
  const worth = (choice: number) => ({ ready: at(size, choice), wait_min: at(wait_min, choice) })
  for (let choice = 1; choice < wait_min.length; choice++) {
    if (at(size, choice) > wanted || at(wait_min, choice) === Number.POSITIVE_INFINITY) continue
    if (isBetter(worth(choice), worth(best))) best = choice
  }
  return best
}

const at = (values: ArrayLike<number>, index: number): number => values[index] as number
