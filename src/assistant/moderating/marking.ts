// A moderator marks an answer as wrong: it is struck where it stands, and whoever asked for it or tapped on it is told.

import type { Locale } from '../../ground/locale.ts'
import { present } from '../../ground/present.ts'
import type { AnsweredMemory } from '../../memory/memory.ts'
import type { Noticeboards } from '../cards/noticeboard.ts'
import type { FaultListener } from '../fault-listener.ts'
import type { Occasion } from '../occasion.ts'
import { struckWords, wrongReply } from './marking.words.ts'

/** Said in reply to an answer, or tapped on it. */
export const marksWrong = (said: string): boolean => /^(?:wrong|❌)[.!]?$/iu.test(said.trim())

interface MarkingParts {
  readonly answered: AnsweredMemory
  readonly noticeboard: Noticeboards
  readonly localeOf: (occasion: Pick<Occasion, 'community'>) => Promise<Locale>
  readonly onMarked: (community: string, link: string | undefined) => Promise<void>
  readonly onFault: FaultListener
}

export function createMarking({ answered, noticeboard, localeOf, onMarked, onFault }: MarkingParts) {
  return {
    /** False where nothing is marked: the asker does not moderate there, or there is no such answer of ours. */
    async markWrong({ asker, community, place }: Occasion, message: string) {
      const earlier = await answered.byAnswer(message)
      const isElsewhere = earlier !== undefined && earlier.place !== place.id
      if (!asker.moderates || place.direct || isElsewhere) return false
      const locale = await localeOf({ community })
      const struck = await noticeboard.strike({ place: place.id, message }, struckWords(locale))
      if (struck === 'gone') return false
      // Nobody's tap brings it back.
      if (earlier) await answered.record({ ...earlier, question: '' })
      const { link, asker: caller = earlier?.askedBy } = struck
      const readers = new Set([caller, ...(await answered.readersOf(message))])
      const calls = [...readers].filter(reader => reader !== undefined && reader !== asker.id) as string[]
      const notice = { reply: wrongReply(locale), key: `${message} wrong`, calls, links: present([link]) }
      if (calls.length > 0) await noticeboard.post(place.id, notice)
      await onMarked(community.id, link)
      return true
    },
    /** Whoever tapped on an answer that others see has read it. Never throws. */
    async tapped({ asker, place, asked }: Occasion, message: string) {
      const tap = asked?.id ?? ''
      const reader = { place: place.id, askedBy: asker.id, questionMessage: tap, answerMessage: `${message}#${tap}` }
      const noting = answered.record({ ...reader, question: '', answeredAt: new Date() })
      await noting.catch(fault => onFault(fault, 'noting who read an answer'))
    },
  }
}

export type Marking = ReturnType<typeof createMarking>
