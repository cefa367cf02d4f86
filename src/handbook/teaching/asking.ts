// The two ways to ask: for a quantity, marked with a stated tolerance, and for one of a few choices.

import type { Locale } from '../../ground/locale.ts'
import { plainText, quoted } from '../../ground/plain-text.ts'
import { Problem } from '../../ground/problem.ts'
import type { Text } from '../../ground/text.ts'
import {
  readCount,
  readCurrent,
  readEnergy,
  readRate,
  readVoltage,
  writeCount,
  writeCurrent,
  writeEnergy,
  writeRate,
  writeVoltage,
} from '../../language/quantities/quantities.ts'
import { aLetter, noChoice } from './asking.words.ts'
import type { Drawn, DrawnChoice, DrawnQuantity, Put, QuantityName } from './lesson.ts'

/** A question with its values, in words. */
export interface DrawnQuestion {
  readonly ask: Text
  /** What an answer looks like, and how near a quantity must be. */
  readonly wanted: Text
  /** Answered by their letters or their words. */
  readonly choices: readonly Text[] | undefined
  /** A right answer as it would be typed. */
  readonly right: string
  /** How the right answer comes about. */
  readonly why: Text
  /** Whether the answer is right. Throws a Problem where it cannot be read. */
  isRight(answer: string): boolean
}

interface Notation {
  read(text: string): number
  write(value: number): string
}

const notations: Readonly<Record<QuantityName, Notation>> = {
  voltage: { read: readVoltage, write: writeVoltage },
  current: { read: readCurrent, write: writeCurrent },
  rate: { read: readRate, write: writeRate },
  energy: { read: readEnergy, write: writeEnergy },
  count: {
    read: text => readCount(text.replace(/ ?cells?$/i, ''), { phrase: ({ say }) => say`a number of cells` }),
    write: writeCount,
  },
}

/** Of a choice, by its place in the list from 0. */
export const letterOf = (at: number): string => 'abcdefgh'[at] as string

export function posed(drawn: Drawn, put: Put<Drawn>, locale: Locale): DrawnQuestion {
  return 'quantity' in drawn
    ? posedQuantity(drawn, put as Put<DrawnQuantity>)
    : posedChoice(drawn, put as Put<DrawnChoice<unknown>>, locale)
}

function posedQuantity({ quantity, value, tolerance }: DrawnQuantity, put: Put<DrawnQuantity>): DrawnQuestion {
  const { read, write } = notations[quantity]
  return {
    ...put,
    choices: undefined,
    right: write(Number(value.toPrecision(4))),
    isRight: answer => Math.abs(read(answer) - value) <= tolerance * (1 + 1e-9),
  }
}

function posedChoice(
  { choices, right }: DrawnChoice<unknown>,
  { choice, ...put }: Put<DrawnChoice<unknown>>,
  locale: Locale,
): DrawnQuestion {
  const shown = choices.map(choice)
  const at = choices.indexOf(right)
  const wanted = aLetter(letterOf(0), letterOf(shown.length - 1))
  return {
    ...put,
    wanted: wanted(locale),
    choices: shown,
    right: letterOf(at),
    isRight: answer => {
      const typed = plainText(answer).toLowerCase().replace(/[).]$/, '')
      const chosen = shown.findIndex(
        (text, index) => typed === letterOf(index) || typed === plainText(text).toLowerCase(),
      )
      if (chosen >= 0) return chosen === at
      throw new Problem({ what: noChoice, ...quoted(answer), expected: wanted, example: 'lesson answer a' })
    },
  }
}
