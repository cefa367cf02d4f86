// What is said of reminders that were set, are still to come, or were cancelled.

import type { WordsOf } from '../../src/assistant/command.ts'
import { atWords, longestCharge_s } from '../../src/assistant/due/reminder.words.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { type Clock, writeClock } from '../../src/language/quantities/clock.ts'
import { clockIn } from '../../src/language/quantities/zoned-clock.ts'
import type { Reminder } from '../../src/memory/reminder.ts'
import type { remindCancel, remindList, remindMe } from './reminders.ts'

/** "At 13:20, in 38 min"; only how long where no clock is known. */
function whenWords(clock: Clock | undefined, wait_s: number, locale: Locale): Text {
  const { say, show } = locale
  const wait = show.duration(wait_s)
  return clock ? say`${atWords(clock, locale)}, in ${wait}` : say`in ${wait}`
}

export const remindMeWords: WordsOf<typeof remindMe> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Reminds you to check a charge that starts now.`,
    asks: [own('remind me in 45min')],
    tells: [own('it is 12:40, remind me at 13:20')],
    takes: {
      in: { about: say`after so long`, as: text => say`in ${text}` },
      at: {
        about: say`or a time of day, by the clock of the club or by "now"; the next such time`,
        as: text => say`at ${text}`,
      },
      now: { about: say`what your clock shows now, where the club has set none`, as: text => say`now ${text}` },
      place: {
        about: say`here, or in a direct message as when not said`,
        as: text => (text === 'here' ? say`here` : say`in a direct message`),
      },
      instead: { about: say`in the place of the last one that you set`, as: () => say`not the last one` },
      for: {
        about: say`or a time question, for when it is estimated to end; takes all that follows, so it stands last`,
      },
    },
    answer: ({ reminder }) => {
      if (!reminder) return [say`No reminder is set, as this must not be charged so.`]
      const { wait, stay_s, isDirect, clock } = reminder
      const wanted = whenWords(clock, wait.low_s, locale)
      const when = clock ? say`${wanted},` : wanted
      const where = isDirect ? say`in a direct message` : say`here`
      if (wait.low_s > longestCharge_s)
        return [say`I remind you ${where} ${clock ? wanted : when}. It may come late or not at all.`]
      return [
        stay_s === undefined
          ? say`I remind you ${where} ${when} to check the charge.`
          : say`I remind you ${where} ${when} to check the charge, and in ${show.duration(stay_s)} whether you are still with it.`,
        reminder.isOpen && clock ? say`Am or pm was not said: ${own(writeClock(clock))} is the next.` : undefined,
        say`A reminder does not watch the pack, and may come late or not at all: stay with it.`,
      ]
    },
    figures: { remindIn: say`reminder in`, stayIn: say`still with it, in` },
    working: ({ reminder }) =>
      reminder
        ? [
            reminder.wait.high_s > reminder.wait.low_s
              ? say`It may need ${show.duration(reminder.wait.low_s)} to ${show.duration(reminder.wait.high_s)}: the reminder comes at the earliest end, so check then, and again.`
              : say`The time is the one that you gave.`,
            reminder.isOwn
              ? undefined
              : say`If I cannot write here any longer, it comes in a direct message; if those are closed to me, I say so here.`,
            say`To cancel: remind cancel code: ${own(reminder.code)}`,
          ]
        : [],
    assumed: ({ reminder }) => (reminder && reminder.wait.low_s > longestCharge_s ? [] : [say`the charge starts now`]),
  }
}

export const remindListWords: WordsOf<typeof remindList> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Lists your reminders that are still to come.`,
    asks: [own('which reminders do I have'), own('show my reminders')],
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

function reminderLine({ code, kind, about, setAt, dueAt, zone }: Reminder, now: Date, locale: Locale): Text {
  const { say, own } = locale
  const wait_s = Math.max(1, (dueAt.getTime() - now.getTime()) / 1000)
  const when = whenWords(zone === undefined ? undefined : clockIn(zone, dueAt, now), wait_s, locale)
  const what = kind === 'stay' ? say`asks whether you are still with it` : say`asks you to check the charge`
  if ((dueAt.getTime() - setAt.getTime()) / 1000 > longestCharge_s) return say`${own(code)}: ${when}.`
  return about === '' ? say`${own(code)}: ${when}, ${what}.` : say`${own(code)}: ${when}, ${what}; for: ${own(about)}.`
}

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
})
