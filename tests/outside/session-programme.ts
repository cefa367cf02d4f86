// The session plan stated a second time, as a mixed-integer programme in the CPLEX LP format, for HiGHS to solve.

import type { Session, Worth } from '../../src/charging/plan/model.ts'

interface Term {
  readonly factor: number
  readonly name: string
}

/** One place in the row of charges of a port: `fromEnd` charges end at or after it, itself included. */
interface Place {
  readonly port: number
  readonly way: number
  readonly kind: number
  readonly fromEnd: number
  readonly duration_min: number
}

/**
 * Which pack takes which place from the end of which port, run which way: its duration then delays that many packs.
 * Ready packs are worth more than any waiting, so that one objective holds both.
 */
export function programmeOf(session: Session): { text: string; readyWorth: number } {
  const { counts, ports, sources, wanted } = session
  const packs = counts.reduce((sum, count) => sum + count, 0)
  const places = placesOf(session, packs)
  const longest_min = Math.max(1, ...places.map(place => place.duration_min))
  const readyWorth = packs * packs * longest_min + 1
  const rows: string[] = []
  const atMost = (terms: readonly Term[], limit: number) => {
    if (terms.length > 0 && Number.isFinite(limit)) rows.push(`${sumOf(terms)} <= ${limit}`)
  }
  const taking = (test: (place: Place) => boolean, factor: (place: Place) => number = () => 1): Term[] =>
    places.filter(test).map(place => ({ factor: factor(place), name: nameOf(place) }))
  const runs = ports.flatMap((ways, port) =>
    ways.map((hookup, way) => ({ port, way, hookup, name: `r_${port}_${way}` })),
  )

  atMost(
    taking(() => true),
    wanted,
  )
  counts.forEach((count, kind) => {
    atMost(
      taking(place => place.kind === kind),
      count,
    )
  })
  ports.forEach((_, port) => {
    atMost(
      runs.filter(run => run.port === port).map(({ name }) => ({ factor: 1, name })),
      1,
    )
    atMost(
      taking(
        place => place.port === port,
        place => place.duration_min,
      ),
      session.deadline_min,
    )
    for (let fromEnd = 1; fromEnd <= packs; fromEnd++) {
      atMost(
        taking(place => place.port === port && place.fromEnd === fromEnd),
        1,
      )
    }
  })
  for (const { port, way, name } of runs) {
    for (const place of places.filter(place => place.port === port && place.way === way)) {
      atMost(
        [
          { factor: 1, name: nameOf(place) },
          { factor: -1, name },
        ],
        0,
      )
    }
  }
  sources.forEach(({ power_W, energy_Wh }, source) => {
    const onIt = runs.filter(({ hookup }) => hookup.source === source)
    atMost(
      onIt.map(({ hookup, name }) => ({ factor: hookup.power_W, name })),
      power_W,
    )
    if (!Number.isFinite(energy_Wh)) return
    // f_source_kind: energy of all packs of a kind from a source, each at the dearest of the ports that hang on it.
    for (const [kind, count] of counts.entries()) {
      const taken = taking(place => place.kind === kind && ports[place.port]?.[place.way]?.source === source)
      for (const { hookup, name } of onIt) {
        const each_Wh = hookup.jobs[kind]?.energy_Wh
        if (each_Wh === undefined || taken.length === 0) continue
        // each_Wh * taken - f <= each_Wh * count * (1 - run)
        const terms = taken.map(term => ({ ...term, factor: each_Wh }))
        atMost(
          [...terms, { factor: -1, name: `f_${source}_${kind}` }, { factor: each_Wh * count, name }],
          each_Wh * count,
        )
      }
    }
    atMost(
      counts.map((_, kind) => ({ factor: 1, name: `f_${source}_${kind}` })),
      energy_Wh,
    )
  })

  const objective = places.map(place => ({
    factor: place.fromEnd * place.duration_min - readyWorth,
    name: nameOf(place),
  }))
  const binaries = [...places.map(nameOf), ...runs.map(({ name }) => name)]
  const text = [
    'Minimize',
    ` obj: ${objective.length > 0 ? sumOf(objective) : '0 r_0_0'}`,
    'Subject To',
    ...rows.map((row, index) => ` c${index}: ${row}`),
    'Binary',
    ...binaries.map(name => ` ${name}`),
    'End',
  ].join('\n')
  return { text, readyWorth }
}

function placesOf({ ports, counts }: Session, packs: number): Place[] {
  return ports.flatMap((ways, port) =>
    ways.flatMap(({ jobs }, way) =>
      counts.flatMap((_, kind) => {
        const duration_min = jobs[kind]?.duration_min
        if (duration_min === undefined) return []
        return Array.from({ length: packs }, (_, index) => ({ port, way, kind, fromEnd: index + 1, duration_min }))
      }),
    ),
  )
}

const nameOf = ({ port, way, kind, fromEnd }: Place): string => `x_${port}_${way}_${kind}_${fromEnd}`

const sumOf = (terms: readonly Term[]): string =>
  terms.map(({ factor, name }) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`).join(' ')

/** The two parts of the objective, from its value. */
export function worthOf(objective: number, readyWorth: number): Worth {
  const ready = Math.max(0, Math.ceil(-objective / readyWorth - 1e-6))
  return { ready, wait_min: Math.round(objective + ready * readyWorth) }
}
