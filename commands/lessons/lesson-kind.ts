// An option that names a lesson, by its key or its number.

import { lessons } from '../../src/handbook/lessons/index.ts'
import type { Lesson } from '../../src/handbook/teaching/taught.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'

const [first, ...others] = lessons

const keyed = choiceKind('lesson', [first.key, ...others.map(({ key }) => key)])

/** Its number in the list will do. */
export const lessonKind: ValueKind<string> = {
  ...keyed,
  read: (text, earlier) => keyed.read(lessons[Number(text) - 1]?.key ?? text, earlier),
}

export const lessonNamed = (key: string): Lesson => lessons.find(lesson => lesson.key === key) ?? first
