// What is said of the reminders that are still to come.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import type { Reminder } from '../../src/memory/reminder.ts'
import type { remindList } from './remind-list.ts'

export const remindListWords: WordsOf<typeof remindList> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Lists your reminders that are still to come.`,
    asks: [own('which reminders do I have')],
    takes: {},
    answer: ({ reminders }) => [
      reminders.length > 0
        ? say`Reminders to come: ${show.number(reminders.length, 0)}.`
        : say`You have no reminder to come.`,
    ],
    figures: { reminders: say`reminders` },
    working: ({ reminders, now }) => (now ? reminders.map(reminder => reminderLine(reminder, now, locale)) : []),
  }
}

function reminderLine({ code, kind, about, dueAt }: Reminder, now: Date, { say, show, own }: Locale): Text {
  const wait = show.duration(Math.max(1, (dueAt.getTime() - now.getTime()) / 1000))
  const what = kind === 'stay' ? say`asks whether you are still with it` : say`asks you to check the charge`
  return about === ''
    ? say`${own(code)}: in ${wait}, ${what}.`
    : say`${own(code)}: in ${wait}, ${what}; for: ${own(about)}.`
}
