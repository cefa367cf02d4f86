// "200W 10A" beside a pack: the most that a charger gives, told without its name.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import { readCurrent, readPower } from '../quantities/quantities.ts'
import { writeQuantity } from '../quantities/quantity.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'

const chargerKinds: ReadonlySet<string> = new Set(['charger', 'session chargers'])
/** So many characters may stand between the two: a space, a comma, a stroke. */
const mostBetween = 3

/** The values, with watts and amps side by side as one charger, where the command asks of one and the text names none. */
export function withCharger(values: readonly Candidate[], { options }: CommandWords): readonly Candidate[] {
  const wanted = options.some(({ kind }) => chargerKinds.has(kind)) && !options.some(({ kind }) => kind === 'power')
  if (!wanted || values.some(({ kind }) => kind === 'charger')) return values
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
