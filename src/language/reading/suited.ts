// The values of a sentence as a command can use them: parted where it has no use for the whole, put together where it asks for that.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import { readCurrent, readPower } from '../quantities/quantities.ts'
import { writeQuantity } from '../quantities/quantity.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'

/** The kinds of option that take what is told by several figures, or by volts that say where a pack stands. */
const takenBy: Readonly<Partial<Record<Candidate['kind'], readonly string[]>>> = {
  charger: ['charger', 'session chargers'],
  source: ['source', 'session sources'],
  state: ['from', 'to', 'session packs'],
}

/** Values of the text, in its order. */
export function suited(values: readonly Candidate[], command: CommandWords): readonly Candidate[] {
  const takes = (kinds: readonly string[] = []) => command.options.some(({ kind }) => kinds.includes(kind))
  const plain = values.flatMap(value => {
    const { kind, parts = [] } = value
    return parts.length > 0 && !takes(takenBy[kind]) ? parts : [value]
  })
  const lacks = (what: Candidate['kind']) => takes(takenBy[what]) && !values.some(({ kind }) => kind === what)
  return lacks('charger') ? withCharger(plain, command) : plain
}

/** So many characters may stand between the two: a space, a comma, a stroke. */
const mostBetween = 3

/** "200W 10A" beside a pack: the most that a charger gives, told without its name. */
function withCharger(values: readonly Candidate[], { options }: CommandWords): readonly Candidate[] {
  if (options.some(({ kind }) => kind === 'power')) return values
  const at = values.findIndex((value, index) => isPair(value, values[index + 1]))
  const [one, other] = [values[at], values[at + 1]]
  if (!one || !other) return values
  const [power, current] = one.kind === 'power' ? [one, other] : [other, one]
  const most_A = writeQuantity(readCurrent(current.text), 'current')
  const text = `0.1-${most_A} by 0.1 ${writeQuantity(readPower(power.text), 'power')}`
  const typed = `${one.typed} ${other.typed}`
  const charger: Candidate = { ...one, kind: 'charger', text, typed, end: other.end }
  return [...values.slice(0, at), charger, ...values.slice(at + 2)]
}

const isPair = (one: Candidate, other: Candidate | undefined): boolean =>
  other !== undefined &&
  [one.kind, other.kind].toSorted().join(' ') === 'current power' &&
  other.start - one.end <= mostBetween
