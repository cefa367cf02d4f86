// What a reminder says when it comes.

import type { Locale, Said } from '../../ground/locale.ts'
import { joined, type Text } from '../../ground/text.ts'
import { type Clock, writeClock } from '../../language/quantities/clock.ts'
import { clockIn } from '../../language/quantities/zoned-clock.ts'
import type { Reminder } from '../../memory/reminder.ts'
import { moderatorCanChange, notReached } from '../private.words.ts'
import { completeReply, type Reply } from '../reply.ts'
import { generalCaution } from '../verdict.words.ts'

/** Said where others read along. */
export const notReachedReply = (locale: Locale): Reply => ({
  ...completeReply(
    { command: 'remind me', readAs: locale.own('remind me') },
    { headline: notReached(locale), cautions: [generalCaution(locale)] },
    locale,
  ),
  alone: true,
})

/** Later than this it says that it is late. */
const punctual_s = 120

/** `missing` where it was to be given elsewhere. */
export function reminderReply(reminder: Reminder, now: Date, locale: Locale, missing?: Said): Reply {
  const { say, show, own } = locale
  const { kind, about, setAt, dueAt } = reminder
  const late_s = secondsBetween(dueAt, now)
  const asked = say`the reminder that you set ${show.duration(secondsBetween(setAt, now))} ago`
  return completeReply(
    { command: 'remind me', readAs: about === '' ? asked : say`${asked}, for: ${own(about)}` },
    {
      headline: joined([
        kind === 'stay'
          ? say`Are you still with the charge? Feel the pack now: stop if it is hot, swells or smells.`
          : endWords(reminder, now, locale),
        late_s > punctual_s ? say`This comes ${show.duration(late_s)} late: I could not send it before.` : undefined,
        missing && say`I could not say so where you set it. ${moderatorCanChange(missing)(locale)}`,
      ]),
      cautions: [generalCaution(locale)],
      followUps: kind === 'end' ? [{ label: say`Again in ${show.duration(again_s)}`, question: againIn }] : [],
    },
    locale,
  )
}

/** "At 13:20", "tomorrow at 9:30". */
export function atWords({ day, ...clock }: Clock, { say, own }: Locale): Text {
  const hour = own(writeClock(clock))
  return day === 'tomorrow' ? say`tomorrow at ${hour}` : say`at ${hour}`
}

/** Later than this no charge is meant. */
export const longestCharge_s = 24 * 3600
const again_s = 600
const againIn = 'remind me in: 10min'

function endWords({ about, low_s, high_s, setAt, dueAt, zone }: Reminder, now: Date, locale: Locale): Text {
  const { say, show, own } = locale
  if (about === '' && zone !== undefined) {
    const clock = own(writeClock(clockIn(zone, dueAt, dueAt)))
    return say`Check the charge: your reminder for ${clock}, ${show.duration(low_s)} after you asked.`
  }
  if (about === '' && low_s > longestCharge_s) return say`You wanted to be reminded: ${show.duration(low_s)} are over.`
  if (about === '') return say`Check the charge: the ${show.duration(low_s)} that you asked for are over.`
  const gone = show.duration(Math.max(1, secondsBetween(setAt, now)))
  return say`Check the charge: it may need ${show.duration(low_s)} to ${show.duration(high_s)}, and ${gone} have gone since you asked.`
}

const secondsBetween = (from: Date, to: Date): number => Math.max(0, Math.floor((to.getTime() - from.getTime()) / 1000))
