// What is said where a reminder cannot be set or cancelled as asked.

import { told } from '../../src/ground/locale.ts'
import { problemAt } from '../../src/ground/plain-text.ts'
import { Problem } from '../../src/ground/problem.ts'
import { durationKind } from '../../src/language/kinds/values.ts'

export const cancelsAll = told(
  ({ say, show }, count: number) => say`Cancel all ${show.number(count, 0)} of your reminders?`,
)

export const noCode = (typed: string): Problem =>
  problemAt(typed, ({ say }) => say`That is no code of a reminder.`, {
    expected: ({ say }) => say`four letters and digits, as "remind list" shows them`,
    example: 'remind list',
  })

export const needsTime = (): Problem =>
  new Problem({
    what: ({ say }) => say`I need to know when, or in how long.`,
    expected: ({ say }) => say`one of these: "in" and how long, "at" and a time of day, or "for" and a time question`,
    example: 'remind me in: 45min',
  })

/** What is typed next may be what the clock shows. */
export const needsClock = (): Problem =>
  new Problem({
    what: ({ say }) =>
      say`I do not see the clock where you are: say in how long, or tell me what time it is now: "it is 12:40".`,
    expected: ({ say }) => say`in how long, or what your clock shows now`,
    example: 'remind me in: 45min',
    awaits: 'now',
  })

export const onlyAnswers = (): Problem =>
  new Problem({
    final: true,
    what: ({ say }) => say`Here I can only answer, so I cannot remind you.`,
    expected: ({ say }) => say`a timer of your own, such as that of the charger or a phone`,
    example: 'how long does a 2S 450 LiPo take at 0.5A',
  })

export const tooMany = (most: number): Problem =>
  new Problem({
    final: true,
    what: ({ say, show }) => say`You have ${show.number(most, 0)} reminders to come; no more fit.`,
    expected: ({ say }) => say`one to cancel first`,
    example: 'remind list',
  })

export const outsideRange = (asked_s: number, least_s: number, most_s: number): Problem =>
  problemAt(
    durationKind.write(asked_s),
    ({ say, show }) => say`I do not remind anybody in ${show.duration(asked_s)}.`,
    {
      expected: ({ say, show }) => say`${show.duration(least_s)} to ${show.duration(most_s)}`,
      example: 'remind me in: 45min',
    },
  )
