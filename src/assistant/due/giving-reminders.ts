// Gives a reminder that is due, also late, after a downtime.

import { english, type Locale, type Said } from '../../ground/locale.ts'
import { reminderFrom } from '../../memory/reminder.ts'
import type { Missing, Noticeboards } from '../cards/noticeboard.ts'
import type { Doing } from './due-loop.ts'
import { notReachedReply, reminderReply } from './reminder.words.ts'

/**
 * In private where the place is closed, with what is missing there: a reminder that nobody sees protects nobody. Where the way in private is closed,
 * the place is only told that it is.
 */
export function givingReminders(noticeboard: Noticeboards, locale: Locale = english('.')): Doing {
  return {
    surfaces: noticeboard.reachable,
    work: async (due, now) => {
      const reminder = reminderFrom(due)
      const { id, person, place, channel } = reminder
      const notice = { reply: reminderReply(reminder, now, locale), key: id, calls: [person] }
      const here = () => noticeboard.post(place, notice)
      const direct = (missing?: Said) =>
        noticeboard.direct(
          person,
          missing ? { ...notice, reply: reminderReply(reminder, now, locale, missing) } : notice,
        )
      const told = () => noticeboard.post(place, { ...notice, reply: notReachedReply(locale) })
      const [chosen, other] = channel === 'here' ? [here, direct] : [direct, told]
      const first = await chosen()
      if (!isMissing(first)) return undefined
      const second = await other(first.missing)
      if (!isMissing(second)) return undefined
      const why = [first, second].map(({ missing }) => missing(english('.')))
      return { givenUp: why.join(' ') }
    },
  }
}

const isMissing = (outcome: unknown): outcome is Missing =>
  typeof outcome === 'object' && outcome !== null && 'missing' in outcome
