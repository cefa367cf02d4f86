// What a lesson is: a few sentences, an example worked out by the core, and questions whose values are drawn, told in one
// language under the rules of one club. There are two ways to ask: for a quantity, and for one of a few choices.

import { type HouseLimits, noHouseLimits } from '../../charging/things/house-limits.ts'
import { english, type Locale, told } from '../../ground/locale.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import type { Text } from '../../ground/text.ts'
import { noSuchChoice } from '../../language/kinds/kinds.words.ts'
import * as quantities from '../../language/quantities/quantities.ts'
import type { Draw } from './draw.ts'

/** What a lesson depends on: the rules of the club, and the language. */
export interface Telling {
  readonly house: HouseLimits
  readonly locale: Locale
}

/** A question with its values, in words. */
export interface DrawnQuestion {
  readonly ask: Text
  /** What an answer looks like, and how near a quantity must be. */
  readonly wanted: Text
  /** Answered by their letters, their numbers or their words. */
  readonly choices: readonly Text[] | undefined
  /** A right answer as it would be typed. */
  readonly right: string
  /** How the right answer comes about. */
  readonly why: Text
  /** Whether the answer is right. Throws a Problem where it cannot be read. */
  isRight(answer: string): boolean
}

export interface LessonQuestion {
  /** Unique within its lesson. */
  readonly key: string
  draw(draw: Draw, telling: Telling): DrawnQuestion
}

export interface Lesson {
  /** Short, lower case; kept with a person's progress, as those of its questions are, so it never changes. */
  readonly key: string
  title(locale: Locale): Text
  /** The most important sentence first. */
  teach(telling: Telling): readonly [Text, ...Text[]]
  example(telling: Telling): Text
  readonly questions: readonly [LessonQuestion, ...LessonQuestion[]]
}

/** Asks for a quantity, in its base unit, that may be off by the tolerance. */
interface Quantity extends Pick<DrawnQuestion, 'ask' | 'why' | 'wanted'> {
  readonly quantity: keyof typeof notations
  readonly value: number
  readonly tolerance: number
}

/** Asks for one of a few things, in the order in which they are shown. */
interface Choice extends Pick<DrawnQuestion, 'ask' | 'why'> {
  readonly choices: readonly Text[]
  readonly right: Text
}

type Asking = (draw: Draw) => Quantity | Choice

interface Told {
  readonly title: Text
  readonly teach: readonly [Text, ...Text[]]
  readonly example: () => Text
  /** By their keys, in the order in which they are asked. */
  readonly questions: Readonly<Record<string, Asking>>
}

export function lesson(key: string, tell: (locale: Locale, house: HouseLimits) => Told): Lesson {
  const toldIn = ({ locale, house }: Telling) => tell(locale, house)
  // The keys are the same in every language, and whatever the rules.
  const { questions } = tell(english('.'), noHouseLimits)
  return {
    key,
    title: locale => tell(locale, noHouseLimits).title,
    teach: telling => toldIn(telling).teach,
    example: telling => toldIn(telling).example(),
    questions: Object.keys(questions).map(
      (one): LessonQuestion => ({
        key: one,
        draw: (draw, telling) => {
          const put = (toldIn(telling).questions[one] as Asking)(draw)
          return 'quantity' in put ? posedQuantity(put) : posedChoice(put, telling.locale)
        },
      }),
    ) as never as Lesson['questions'],
  }
}

const { readCount, writeCount } = quantities
const notations = {
  voltage: { read: quantities.readVoltage, write: quantities.writeVoltage },
  current: { read: quantities.readCurrent, write: quantities.writeCurrent },
  rate: { read: quantities.readRate, write: quantities.writeRate },
  energy: { read: quantities.readEnergy, write: quantities.writeEnergy },
  count: {
    read: (text: string) => readCount(text.replace(/ ?cells?$/i, ''), { phrase: ({ say }) => say`a number of cells` }),
    write: writeCount,
  },
}

const bareNumber = /^\s*\d+(?:[.,]\d+)?$/

function posedQuantity({ quantity, value, tolerance, ...put }: Quantity): DrawnQuestion {
  const { read, write } = notations[quantity]
  const right = write(Number(value.toPrecision(4)))
  // A bare number is in the unit that was asked for.
  const unit = right.replace(/^[\d.]+/, '')
  const within = (answer: string) =>
    Math.abs(read(bareNumber.test(answer) ? answer + unit : answer) - value) <= tolerance * (1 + 1e-9)
  return { ...put, choices: undefined, right, isRight: within }
}

/** Of a choice, by its place in the list from 0. */
export const letterOf = (at: number): string => 'abcdefgh'[at] as string
const aLetter = told(({ say, own }, first: string, last: string) => say`a letter, ${own(first)} to ${own(last)}`)

function posedChoice({ ask, why, choices, right }: Choice, locale: Locale): DrawnQuestion {
  const at = choices.indexOf(right)
  const wanted = aLetter(letterOf(0), letterOf(choices.length - 1))
  return {
    ask,
    why,
    wanted: wanted(locale),
    choices,
    right: letterOf(at),
    isRight: answer => {
      const typed = plainText(answer).toLowerCase().replace(/[).]$/, '')
      const chosen = choices.findIndex((text, one) =>
        [letterOf(one), String(one + 1), plainText(text).toLowerCase()].includes(typed),
      )
      if (chosen >= 0) return chosen === at
      throw problemAt(answer, noSuchChoice, { expected: wanted, example: 'lesson answer a' })
    },
  }
}
