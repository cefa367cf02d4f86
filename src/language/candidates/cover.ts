// The best whole reading: candidates that do not overlap, worth the most together.

import type { Candidate } from './sentence/candidate.ts'

/** Counts for candidates that name no value: they stand where nothing better does. */
const least = 0.001

/** A sure reading of more words is worth more than the readings of its parts. */
const worth = ({ score, typed }: Candidate): number =>
  Math.max(score ** 1.5, least) * Math.min(12, typed.split(/[ ,/]+|(?<=\d)(?=\p{L})|(?<=\p{L})(?=\d)/u).length)

const composed: ReadonlySet<Candidate['kind']> = new Set(['charger', 'source', 'state'])

const covers = new WeakMap<readonly Candidate[], readonly Candidate[]>()

/** A cover without overlaps, in the order of the text; the same for the same list. */
export function bestCover(candidates: readonly Candidate[]): readonly Candidate[] {
  const known = covers.get(candidates) ?? coverAnew(candidates)
  covers.set(candidates, known)
  return known
}

function coverAnew(candidates: readonly Candidate[]): readonly Candidate[] {
  const plain = candidates.filter(({ kind }) => !composed.has(kind))
  // Volts that say where a pack stands are volts, or nothing.
  const within = ({ start, end, kind: of }: Candidate) =>
    plain.filter(one => one.start >= start && one.end <= end && (of !== 'state' || one.kind === 'voltage'))
  return coverOf(candidates).map(one => (composed.has(one.kind) ? { ...one, parts: coverOf(within(one)) } : one))
}

function coverOf(candidates: readonly Candidate[]): readonly Candidate[] {
  const byEnd = [...candidates].sort((a, b) => a.end - b.end || a.start - b.start)
  const ends = byEnd.map(({ end }) => end)
  const best = [0]
  byEnd.forEach((candidate, at) => {
    const before = best[endedBy(ends, candidate.start)] ?? 0
    best.push(Math.max(best[at] ?? 0, before + worth(candidate)))
  })
  const cover: Candidate[] = []
  for (let at = byEnd.length; at > 0; ) {
    const candidate = byEnd[at - 1]
    if (!candidate || best[at] === best[at - 1]) at -= 1
    else {
      cover.push(candidate)
      at = endedBy(ends, candidate.start)
    }
  }
  return cover.reverse()
}

/** How many of the sorted ends are not behind `start`. */
function endedBy(ends: readonly number[], start: number): number {
  let [low, high] = [0, ends.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if ((ends[middle] ?? 0) <= start) low = middle + 1
    else high = middle
  }
  return low
}
