// An option that names a lesson.

import { choiceKind } from '../../src/assistant/choice-kind.ts'
import { lessons } from '../../src/lessons/index.ts'
import type { Lesson } from '../../src/lessons/lesson.ts'

const [first, ...others] = lessons

export const lessonKind = choiceKind('lesson', [first.key, ...others.map(({ key }) => key)])

export const lessonNamed = (key: string): Lesson => lessons.find(lesson => lesson.key === key) ?? first
