// What a reminder says when it comes.

import { cautionsFor } from '../cautions/cautions.ts'
import { english } from '../ground/locale.ts'
import { showIn } from '../ground/show.ts'
import type { Reminder } from '../memory/stores/reminder.ts'
import { completeReply, type Reply } from './reply.ts'

/** Later than this it says that it is late. */
const punctual_s = 120

export function reminderReply(reminder: Reminder, now: Date): Reply {
  const show = showIn('.')
  const { kind, about, setAt, dueAt } = reminder
  const late_s = secondsBetween(dueAt, now)
  const late =
    late_s > punctual_s ? ` This comes ${show.duration(late_s)} late: I could not send it before.` : ''
  const asked = `the reminder that you set ${show.duration(secondsBetween(setAt, now))} ago`
  return completeReply(
    { command: 'remind me', readAs: about === '' ? asked : `${asked}, for: ${about}` },
    {
      headline: (kind === 'stay' ? stay : end(reminder, now)) + late,
      cautions: cautionsFor({}),
      followUps: kind === 'end' ? [{ label: 'Again in 10 min', question: 'remind me in: 10min' }] : [],
    },
    english('.'),
  )
}

const stay = 'Are you still with the charge? Feel the pack now: stop if it is hot, swells or smells.'

function end({ about, low_s, high_s, setAt }: Reminder, now: Date): string {
  const { duration } = showIn('.')
  if (about === '') return `Check the charge: the ${duration(low_s)} that you asked for are over.`
  const gone = duration(Math.max(1, secondsBetween(setAt, now)))
  return `Check the charge: it may need ${duration(low_s)} to ${duration(high_s)}, and ${gone} have gone since you asked.`
}

const secondsBetween = (from: Date, to: Date): number =>
  Math.max(0, Math.floor((to.getTime() - from.getTime()) / 1000))
