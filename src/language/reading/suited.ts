// The values of a sentence as a command can use them: parted where it has no use for the whole, put together where it asks for that.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import { withChargers } from './charger-told.ts'

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
  return withChargers(plain, command)
}
