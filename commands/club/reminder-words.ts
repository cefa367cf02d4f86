// The words that the commands about reminders share.

import type { Context } from '../../src/assistant/context.ts'
import type { Show } from '../../src/ground/show.ts'
import type { Reminder } from '../../src/memory/stores/reminder.ts'

export const channelWords = (channel: Reminder['channel'], { place }: Pick<Context, 'place'>): string =>
  channel === 'direct' || place.direct ? 'in a direct message' : 'here'

export const reminderLine = ({ code, kind, about, dueAt }: Reminder, now: Date, show: Show): string => {
  const wait_s = Math.max(1, (dueAt.getTime() - now.getTime()) / 1000)
  const what = kind === 'stay' ? 'asks whether you are still with it' : 'asks you to check the charge'
  return `${code}: in ${show.duration(wait_s)}, ${what}${about === '' ? '' : `; for: ${about}`}.`
}
