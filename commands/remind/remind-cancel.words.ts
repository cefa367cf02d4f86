// What is said of reminders that were cancelled.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { remindCancel } from './remind-cancel.ts'

export const remindCancelWords: WordsOf<typeof remindCancel> = ({ say, show, own }) => ({
  summary: say`Cancels your reminders: those of one code, or all.`,
  asks: [own('cancel my reminders')],
  takes: { code: { about: say`as "remind list" shows it; all of them when not said` } },
  answer: ({ cancelled }) => [
    cancelled === 0
      ? say`There was nothing to cancel.`
      : cancelled === 1
        ? say`Cancelled: one reminder.`
        : say`Cancelled: ${show.number(cancelled, 0)} reminders.`,
  ],
  figures: {},
})
