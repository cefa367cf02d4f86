// Words that stand for a number which the answer must have: a "flat" pack has to be measured, a "cold" one too.

import { Problem } from '../../ground/problem.ts'
import type { CommandWords } from './vocabulary.ts'

interface Telling {
  readonly word: RegExp
  /** The option that holds the number. */
  readonly option: string
  readonly what: string
  readonly expected: string
  readonly example: string
}

const tellings: readonly Telling[] = [
  {
    word: /^(?:flat|dead|empty|(?:over-?)?discharged|undervolted|depleted|drained)$/,
    option: 'from',
    what: 'A pack that was run down has to be measured before it is charged.',
    expected: 'its volts at rest, per cell',
    example: 'from 3.4V per cell',
  },
  {
    word: /^(?:freezing|frozen|frost|frosty|ice|icy|snow|cold|chilly)$/,
    option: 'temperature',
    what: 'Cold changes what is safe, so I need the temperature of the pack.',
    expected: 'the temperature of the pack',
    example: 'at 5°C',
  },
]

/** Throws a Problem where such a word stands and the number does not. */
export function refuseUntold(
  words: readonly string[],
  { options }: CommandWords,
  given: Readonly<Record<string, string>>,
): void {
  for (const { word, option, ...details } of tellings) {
    const token = words.find(candidate => word.test(candidate))
    if (token === undefined || given[option] !== undefined) continue
    if (options.some(({ name }) => name === option)) throw new Problem({ ...details, token })
  }
}
