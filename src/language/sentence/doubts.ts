// What a plain sentence leaves in doubt: asked about, never guessed.

import { shortened } from '../../ground/plain-text.ts'
import { Problem } from '../../ground/problem.ts'
import { listKinds } from './gathered.ts'
import { nounKinds, type Phrase } from './phrases.ts'
import type { CommandWords, OptionWords } from './vocabulary.ts'

const ofState = new Set(['voltage', 'percent', 'level'])
const mayNotBeIgnored = new Set([
  ...ofState,
  'cell volts',
  'chemistry',
  'cells',
  'series',
  'capacity',
  'pack',
])

/** A command that takes none of these rests on no value of a sentence. */
const valueKinds: ReadonlySet<string> = new Set([...nounKinds, ...listKinds, 'from', 'to'])

/** A value that no option takes: throws where it may change the answer, which saying "not used" would not mend. */
export function refuseToIgnore({ kind, text }: Phrase, { name, options }: CommandWords): void {
  const token = shortened(text)
  if (!options.some(option => valueKinds.has(option.kind))) return
  if (kind === 'count' && !/^(?:1|one)(?: ?x)?$/i.test(text)) {
    throw new Problem({
      what: `${name} is worked out for one pack.`,
      token,
      expected: 'one pack; for several at chargers ask for a plan, on one board ask for parallel',
      example: `${name} pack: 3S 720 LiHV`,
    })
  }
  if (!mayNotBeIgnored.has(kind)) return
  const state = ofState.has(kind) && options.some(option => option.name === 'from')
  throw new Problem({
    what: `I cannot tell what ${token} is of.`,
    token,
    expected: state
      ? '"from" or "to" before it, or nothing where it only repeats the label'
      : 'each value once, with the name of its detail before it',
    example: state ? `from ${token}` : `${name} pack: 3S 720 LiHV`,
  })
}

/** `at 1/2 A` could be half an ampere, or the steps of a charger. */
export function severalCurrents({ text }: Phrase): Problem {
  return new Problem({
    what: 'That could be one current or the steps of a charger.',
    token: shortened(text),
    expected: 'one current in decimals behind "at", or the steps behind "on a charger with"',
    example: 'at 0.5A',
  })
}

/** Volts and amps right behind a pack could be its label and the current wanted, or a supply. */
export function supplyOrLabel({ text }: Phrase): Problem {
  return new Problem({
    what: 'Those volts and amps could be those of a supply, or of the pack and its charge.',
    token: shortened(text),
    expected: '"from" before those of a supply; the current alone, without the volts of the label',
    example: `from ${shortened(text)}`,
  })
}

/** Two values for one option; two packs where one may feed the other. */
export function twice({ name, kind }: OptionWords, { text }: Phrase): Problem {
  const packs = kind === 'pack' || name === 'source'
  return new Problem({
    what: packs
      ? 'I cannot tell which of the two is charged and which feeds.'
      : `That gives two values for ${name}.`,
    token: shortened(text),
    expected: packs ? 'the names in front of them' : `one ${name}`,
    example: packs ? 'source pack: 3S 720 LiHV source: 4S 5000 Li-ion' : `${name}: ${shortened(text)}`,
  })
}
