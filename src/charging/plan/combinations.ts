// The combinations of hookups that the sources have the power for, without those that another beats.

import { energyTolerance_Wh, type Hookup, type Hookups, lasts_min, type Session } from './model.ts'

type Ways = readonly (Hookup | undefined)[]

/** How many combinations there are, with those that lack power. */
export function combinationCount({ ports }: Session): number {
  return ports.reduce((product, ways) => product * (ways.length + 1), 1)
}

/** Whether every source has the power for what hangs on it. */
export function hasPower(session: Session, hookups: Hookups): boolean {
  return session.sources.every(({ power_W }, source) => {
    const drawn_W = hookups.reduce((sum, hookup) => sum + (hookup?.source === source ? hookup.power_W : 0), 0)
    return drawn_W <= power_W * (1 + energyTolerance_Wh)
  })
}

/** Every combination that could be the best. Ports alike are not told apart. */
export function combinationsOf(session: Session): Hookups[] {
  const ports = session.ports.map((ways): Ways => [...ways, undefined])
  const combinations = ports.reduce<number[][]>(
    (partial, ways, port) => {
      return partial.flatMap(chosen => {
        const least = Math.max(...chosen.filter((_, p) => session.ports[p] === session.ports[port]))
        return ways
          .map((_, way) => way)
          .filter(way => way >= least)
          .map(way => [...chosen, way])
      })
    },
    [[]],
  )
  return combinations
    .map(chosen => chosen.map((way, port) => ports[port]?.[way]))
    .filter(hookups => hasPower(session, hookups))
    .filter(hookups => !isBeaten(session, hookups, ports))
}

/** Whether changing one port alone makes it as fast for every kind, or faster, at no cost. */
function isBeaten(session: Session, hookups: Hookups, ports: readonly Ways[]): boolean {
  return hookups.some((hookup, port) =>
    (ports[port] as Ways).some(
      other =>
        other !== undefined &&
        other !== hookup &&
        beats(session, other, hookup) &&
        hasPower(session, hookups.with(port, other)),
    ),
  )
}

function beats(session: Session, other: Hookup, hookup: Hookup | undefined): boolean {
  if (session.sources[other.source]?.energy_Wh !== Number.POSITIVE_INFINITY) return false
  if (hookup === undefined) return true
  const asFast = other.jobs.every((job, kind) => lasts_min(job) <= lasts_min(hookup.jobs[kind]))
  return asFast && other.jobs.some((job, kind) => lasts_min(job) < lasts_min(hookup.jobs[kind]))
}
