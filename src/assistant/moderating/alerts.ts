// Tells the moderators of a club of emergencies and of packs told as unsound, in the room that they chose for it.

import { createHash } from 'node:crypto'
import { type Danger, emergencies, unsound } from '../../charging/situation/dangers.ts'
import { english } from '../../ground/locale.ts'
import { present } from '../../ground/present.ts'
import type { DueMemory, NewDue } from '../../memory/due.ts'
import type { HouseRules } from '../../memory/memory.ts'
import { isDirectCommunity } from '../../memory/owner.ts'
import type { Noticeboards } from '../cards/noticeboard.ts'
import type { Doing } from '../due/due-loop.ts'
import { lookedUp } from '../lookup.ts'
import type { Occasion } from '../occasion.ts'
import { type Alert, alertReply } from './alerts.words.ts'

export interface Alerts extends Doing {
  /** Makes it due to tell of the most pressing of these dangers. While the memory is away it is told at once. */
  tell(occasion: Occasion, tells: readonly Danger[]): Promise<void>
}

interface AlertParts {
  readonly due: DueMemory
  readonly noticeboard: Noticeboards
  readonly rulesOf: (community: string) => HouseRules | undefined
  readonly clock: () => Date
}

const alarming: readonly Danger[] = [...emergencies, ...unsound]
/** Whoever tells the same again so soon tells of the same. */
const same_ms = 10 * 60_000
const day_ms = 86_400_000
/** An answer is out soon after it is told of; later than this what link there is will do. */
const soon_ms = 2000
const longestWait_ms = 8000

/** Without what it is made of: it is kept longer than the rest. */
const idOf = (...parts: readonly unknown[]): string =>
  `alert ${createHash('sha256').update(JSON.stringify(parts)).digest('base64url')}`

export function createAlerts({ due, noticeboard, rulesOf, clock }: AlertParts): Alerts {
  async function give({ id, place, body }: NewDue, waitsUntil_ms = 0) {
    const alert = body as Alert
    const link = await noticeboard.linkOf(place, alert)
    const now_ms = clock().getTime()
    if (link === 'soon' && now_ms < waitsUntil_ms) return { again: new Date(now_ms + soon_ms) }
    const links = present([link === 'soon' ? alert.link : (link ?? alert.link)])
    const posted = await noticeboard.post(place, { reply: alertReply(alert, english('.')), key: id, links })
    if (!('missing' in posted)) return undefined
    const owner = await noticeboard.ownerOf(alert.community)
    const reply = alertReply(alert, english('.'), posted.missing)
    if (owner !== undefined && (await noticeboard.direct(owner, { reply, key: id, links })) === 'sent') return undefined
    return { givenUp: posted.missing(english('.')) }
  }

  return {
    surfaces: noticeboard.reachable,
    work: due => give(due, (due.latestAt?.getTime() ?? 0) - day_ms + longestWait_ms),
    async tell({ asker, place, community, asked }, tells) {
      const room = rulesOf(community.id)?.moderatorsRoom
      const danger = alarming.find(one => tells.includes(one))
      if (room === undefined || danger === undefined || isDirectCommunity(community.id)) return
      const now = clock()
      const row: NewDue = {
        id: idOf(place.id, asker.id, danger, Math.floor(now.getTime() / same_ms)),
        kind: 'alert',
        person: asker.id,
        place: room,
        body: { danger, name: asker.name, link: asked?.link, way: asked?.way, community: community.id } satisfies Alert,
        dueAt: now,
        latestAt: new Date(now.getTime() + day_ms),
      }
      if ((await lookedUp(due.add(row))) === undefined) await give(row)
    },
  }
}
