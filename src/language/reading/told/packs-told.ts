// The packs that a sentence tells: which is charged, and which feeds.

import type { Candidate } from '../../candidates/sentence/candidate.ts'
import type { CommandWords } from '../../sentence/vocabulary.ts'
import { commonest, contradict, type PackTold, together, toldBy, toldIn } from './told-pack.ts'

/** Before a pack they say that it feeds. */
export const feedCues: ReadonlySet<string> = new Set(['from', 'off', 'using', 'out', 'with'])
/** Parts of one pack are put together; of two that contradict each other one feeds, where the command knows a source. */
export function packsOf(values: readonly Candidate[], { options }: CommandWords) {
  const takesCapacity = options.some(({ kind }) => kind === 'capacity')
  const told = values.filter(value => toldBy(value) && !(value.kind === 'capacity' && takesCapacity))
  const takesSource = options.some(({ kind }) => kind === 'source')
  const used = new Set<Candidate>()
  let charged: PackTold[] = []
  let feeding: PackTold | undefined
  // What is told in full comes first: "the Falcon 450 flies with a 3S 2200".
  for (const value of told.toSorted((a, b) => Number(isWhole(toldBy(b))) - Number(isWhole(toldBy(a))))) {
    const { cue = '' } = value
    const pack = toldBy(value) as PackTold
    const clashes = charged.length > 0 && contradict(together(charged), pack)
    const feeds = takesSource && feeding === undefined && pack.capacity_Ah !== undefined && feedCues.has(cue)
    if (feeds && (clashes || told.length > 1)) {
      feeding = pack
      used.add(value)
    } else if (!clashes) {
      charged.push(pack)
      used.add(value)
    } else if (takesSource && feeding === undefined && isWhole(pack) && isWhole(together(charged))) {
      // The larger of two feeds the smaller.
      const first = together(charged)
      const isLarger = (pack.capacity_Ah ?? 0) > (first.capacity_Ah ?? 0)
      feeding = isLarger ? pack : first
      if (!isLarger) charged = [pack]
      used.add(value)
    }
  }
  return { charged: charged.length > 0 ? together(charged) : undefined, feeding, used }
}

/** Whether several packs are told that cannot be one, and no word says of any that it feeds. */
export function severalKinds(values: readonly Candidate[]): boolean {
  const packs = values.filter(value => isWhole(toldBy(value)))
  const [first, ...others] = packs.flatMap(value => toldBy(value) ?? [])
  return others.some(other => first && contradict(first, other)) && !packs.some(({ cue = '' }) => feedCues.has(cue))
}

const isWhole = ({ series, capacity_Ah }: PackTold = {}): boolean => series !== undefined && capacity_Ah !== undefined

/** A pack that feeds with the commonest type, where none is told: of all types it is left the fullest. */
export function withType(source: string | undefined): string | undefined {
  const typed = `${source} ${commonest}`
  return source !== undefined && !toldIn(source) && toldIn(typed) ? typed : undefined
}
