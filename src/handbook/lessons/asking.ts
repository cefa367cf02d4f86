// The two ways to ask: for a quantity, marked with a stated tolerance, and for one of a few choices.

import { plainText, quoted } from '../../ground/plain-text.ts'
import { Problem } from '../../ground/problem.ts'
import type { Draw } from './draw.ts'
import type { DrawnQuestion } from './lesson.ts'

interface QuantityAsked {
  readonly ask: string
  readonly value: number
  /** In the unit of the value. */
  readonly tolerance: number
  /** As a person reads it, such as "amps, within 2 %". */
  readonly wanted: string
  readonly read: (text: string) => number
  readonly write: (value: number) => string
  readonly why: string
}

export function askQuantity({ value, tolerance, read, write, ...asked }: QuantityAsked): DrawnQuestion {
  return {
    ...asked,
    right: write(Number(value.toPrecision(4))),
    isRight: answer => Math.abs(read(answer) - value) <= tolerance * (1 + 1e-9),
  }
}

interface ChoiceAsked {
  readonly ask: string
  readonly choices: readonly [string, string, ...string[]]
  /** One of the choices. */
  readonly right: string
  readonly why: string
}

/** Of a choice, by its place in the list from 0. */
export const letterOf = (at: number): string => 'abcdefgh'[at] as string

/** In an order that is drawn, unless the choices have one of their own. */
export function askChoice(
  draw: Draw,
  { choices, right, ...asked }: ChoiceAsked,
  ordered = false,
): DrawnQuestion {
  const shown = ordered ? choices : draw.shuffled(choices)
  return {
    ...asked,
    wanted: `a letter, ${letterOf(0)} to ${letterOf(shown.length - 1)}`,
    choices: shown,
    right: letterOf(shown.indexOf(right)),
    isRight: answer => {
      const typed = plainText(answer).toLowerCase().replace(/[).]$/, '')
      const at = shown.findIndex(
        (choice, index) => typed === letterOf(index) || typed === plainText(choice).toLowerCase(),
      )
      if (at >= 0) return shown[at] === right
      throw new Problem({
        what: 'That is none of the choices.',
        ...quoted(answer),
        expected: `a letter, ${letterOf(0)} to ${letterOf(shown.length - 1)}`,
        example: 'lesson answer a',
      })
    },
  }
}
