// Random field sessions in numbers, small or as large as a field bag.

import fc from 'fast-check'
import type { Hookup, Session, SourceBudget } from '../../src/charging/plan/model.ts'

export interface SessionSize {
  readonly mostKinds: number
  readonly mostOfAKind: number
  readonly mostPacks: number
  readonly mostPorts: number
}

const some = <T>(value: fc.Arbitrary<T>, otherwise: T) => fc.oneof(value, fc.constant(otherwise))

/** Durations in whole minutes, energies and powers in whole numbers so that no rounding blurs a comparison. */
export function someSession(size: SessionSize): fc.Arbitrary<Session> {
  const counts = fc
    .array(fc.integer({ min: 1, max: size.mostOfAKind }), { minLength: 1, maxLength: size.mostKinds })
    .filter(counts => counts.reduce((sum, count) => sum + count, 0) <= size.mostPacks)
  return counts.chain(counts => {
    const packs = counts.reduce((sum, count) => sum + count, 0)
    const sources = fc.array(someBudget(packs), { minLength: 1, maxLength: 2 })
    return sources.chain(sources =>
      fc.record({
        counts: fc.constant(counts),
        sources: fc.constant(sources),
        ports: somePorts(counts.length, sources.length, size.mostPorts),
        deadline_min: some(fc.integer({ min: 5, max: 15 * packs }), Number.POSITIVE_INFINITY),
        wanted: some(fc.integer({ min: 1, max: packs }), packs),
      }),
    )
  })
}

const someBudget = (packs: number): fc.Arbitrary<SourceBudget> =>
  fc.record({
    power_W: some(fc.integer({ min: 20, max: 150 }), Number.POSITIVE_INFINITY),
    energy_Wh: some(fc.integer({ min: 10, max: 15 * packs }), Number.POSITIVE_INFINITY),
  })

const someHookup = (kinds: number, sources: number): fc.Arbitrary<Hookup> =>
  fc.record({
    source: fc.integer({ min: 0, max: sources - 1 }),
    power_W: fc.integer({ min: 5, max: 100 }),
    jobs: fc.array(
      fc.option(
        fc.record({ duration_min: fc.integer({ min: 1, max: 30 }), energy_Wh: fc.integer({ min: 1, max: 25 }) }),
        { nil: undefined, freq: 8 },
      ),
      { minLength: kinds, maxLength: kinds },
    ),
  })

/** Sometimes two ports are alike, as two outputs of one charger. */
function somePorts(kinds: number, sources: number, mostPorts: number): fc.Arbitrary<Hookup[][]> {
  const port = fc.array(someHookup(kinds, sources), { minLength: 1, maxLength: 3 })
  return fc.tuple(fc.array(port, { minLength: 1, maxLength: mostPorts }), fc.boolean()).map(([ports, twins]) => {
    const [first] = ports
    return twins && first && ports.length > 1 ? [...ports.slice(0, -1), first] : ports
  })
}
