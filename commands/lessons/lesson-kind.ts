// An option that names a lesson, by its key.

import { lessons } from '../../src/handbook/lessons/index.ts'
import type { Lesson } from '../../src/handbook/teaching/taught.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'

const [first, ...others] = lessons

export const lessonKind: ValueKind<string> = choiceKind('lesson', [first.key, ...others.map(({ key }) => key)])

export const lessonNamed = (key: string): Lesson => lessons.find(lesson => lesson.key === key) ?? first
