// What a club's moderators get of what is asked there: alerts at once, a digest by the week, and answers marked as wrong.

import type { Locale } from '../../ground/locale.ts'
import type { HouseRules, Memory } from '../../memory/memory.ts'
import type { Noticeboards } from '../cards/noticeboard.ts'
import type { Doing } from '../due/due-loop.ts'
import type { FaultListener } from '../fault-listener.ts'
import type { Occasion } from '../occasion.ts'
import type { Reply } from '../reply.ts'
import { createAlerts } from './alerts.ts'
import { createDigests, noticedOf } from './digest.ts'
import { createMarking, type Marking } from './marking.ts'

export interface ModeratingParts {
  readonly memory: Memory
  readonly noticeboard: Noticeboards
  readonly rulesOf: (community: string) => HouseRules | undefined
  readonly localeOf: (occasion: Pick<Occasion, 'community'>) => Promise<Locale>
  readonly clock: () => Date
  readonly onFault: FaultListener
}

export interface Moderating extends Marking {
  readonly doings: { readonly alert: Doing; readonly digest: Doing }
  /** True where something is due now. Never throws. */
  heed(occasion: Occasion, reply: Reply): Promise<boolean>
  /** The rules of the club may be others now. Never throws. */
  rulesChanged(community: string): Promise<void>
}

export function createModerating(parts: ModeratingParts): Moderating {
  const { memory, onFault } = parts
  const alert = createAlerts({ ...parts, ...memory })
  const digest = createDigests(parts)
  const faulty = (fault: unknown) => onFault(fault, 'telling moderators')

  const marking = createMarking({
    ...parts,
    ...memory,
    onMarked: (community, link = '') => digest.note(community, { kind: 'wrong', about: '', link }).catch(faulty),
  })
  return {
    ...marking,
    doings: { alert, digest },
    async heed(occasion, reply) {
      const { tells = [] } = reply
      const noticed = noticedOf(reply, occasion)
      try {
        if (tells.length > 0) await alert.tell(occasion, tells)
        if (noticed) await digest.note(occasion.community.id, noticed)
      } catch (fault) {
        faulty(fault)
      }
      return tells.length > 0
    },
    rulesChanged: community => digest.ensure(community).catch(faulty),
  }
}
