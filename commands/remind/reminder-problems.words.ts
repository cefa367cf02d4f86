// What is said where a reminder cannot be set or cancelled as asked.

import { type Said, told } from '../../src/ground/locale.ts'

export const noCode: Said = ({ say }) => say`That is no code of a reminder.`
export const cancelsAll = told(
  ({ say, show }, count: number) => say`Cancel all ${show.number(count, 0)} of your reminders?`,
)
export const noCodeExpected: Said = ({ say }) => say`four letters and digits, as "remind list" shows them`
export const needsTime: Said = ({ say }) => say`I need to know when to remind you.`
export const needsTimeExpected: Said = ({ say }) => say`either "in" and how long, or "for" and a time question`
export const onlyAnswers: Said = ({ say }) => say`Here I can only answer, so I cannot remind you.`
export const onlyAnswersExpected: Said = ({ say }) => say`a timer of your own, such as that of the charger or a phone`

export const tooMany = told(
  ({ say, show }, most: number) => say`You have ${show.number(most, 0)} reminders to come; no more fit.`,
)

export const tooManyExpected: Said = ({ say }) => say`one to cancel first`

export const outsideRange = told(
  ({ say, show }, asked_s: number) => say`I do not remind anybody in ${show.duration(asked_s)}.`,
)

export const outsideRangeExpected = told(
  ({ say, show }, least_s: number, most_s: number) => say`${show.duration(least_s)} to ${show.duration(most_s)}`,
)
