// An option that names a lesson, by its key or by what people ask about.

import { lessons } from '../../src/handbook/lessons/index.ts'
import type { Lesson } from '../../src/handbook/lessons/lesson.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'

const [first, ...others] = lessons

/** What a lesson explains, as people ask for it. */
const topics: Readonly<Record<string, readonly string[]>> = {
  label: ['numbers on a pack', 'what does 3s mean', 'what does 4s mean', 'what is mah', "what's mah"],
  'c-rate': ['c rate', 'c rates', 'c rating', 'what does 1c mean', 'what is 1c', "what's 1c"],
  cutoff: [
    'what is lihv',
    "what's lihv",
    'whats lihv',
    'cutoff voltage',
    'lipo setting',
    'lihv setting',
    'wrong setting',
    ...['2s', '3s', '4s', '5s', '6s'].flatMap(cells => [`${cells} setting`, `on ${cells}`]),
  ],
  balance: [
    'balancing',
    'balance charging',
    'balance charge',
    'balance lead',
    'balance plug',
    'balance check',
    'cell difference',
    'difference ok',
  ],
  place: [
    'where to charge',
    'where can i charge',
    'lipo bag',
    'fire safe',
    'in the cold',
    'in freezer',
    'in the freezer',
    'is warm',
    'still warm',
    'in my car',
    'in the car',
    'indoors',
    'at home',
  ],
  storage: ['why storage', 'about storage'],
  sources: ['about sources', 'about supplies'],
  retire: ['retire', 'dispose of', 'how many cycles', 'how old', 'revive', 'recycle'],
}

export const lessonKind: ValueKind<string> = {
  ...choiceKind('lesson', [first.key, ...others.map(({ key }) => key)]),
  spoken: Object.fromEntries(
    Object.entries(topics).flatMap(([key, phrases]) => phrases.map(phrase => [phrase, key])),
  ),
}

export const lessonNamed = (key: string): Lesson => lessons.find(lesson => lesson.key === key) ?? first
