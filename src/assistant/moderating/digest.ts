// A digest for the moderators of a club, every week where the club wants one: what was refused, not understood, and wrong.

import { type Danger, dangers } from '../../charging/situation/dangers.ts'
import { english } from '../../ground/locale.ts'
import { familyOf } from '../../handbook/tongues.ts'
import type { HouseRules, Memory } from '../../memory/memory.ts'
import type { Noticed } from '../../memory/noticed.ts'
import { isDirectCommunity } from '../../memory/owner.ts'
import type { Noticeboards } from '../cards/noticeboard.ts'
import type { Doing } from '../due/due-loop.ts'
import type { Occasion } from '../occasion.ts'
import type { Reply } from '../reply.ts'
import { digestReply } from './digest.words.ts'

export interface Digests extends Doing {
  /** Where the club wants one it comes in a week, unless it is due already. */
  ensure(community: string): Promise<void>
  /** Keeps what one tells of. */
  note(community: string, noticed: Noticed): Promise<void>
}

interface DigestParts {
  readonly memory: Pick<Memory, 'due' | 'house' | 'noticed'>
  readonly noticeboard: Noticeboards
  readonly rulesOf: (community: string) => HouseRules | undefined
  readonly clock: () => Date
}

const week_ms = 7 * 86_400_000
const mostLinks = 5

const isWanted = (community: string, rules: HouseRules | undefined): boolean =>
  rules?.digest !== undefined && rules.moderatorsRoom !== undefined && !isDirectCommunity(community)

export function createDigests({ memory, noticeboard, rulesOf, clock }: DigestParts): Digests {
  const { due, house, noticed } = memory

  async function ensure(community: string): Promise<void> {
    if (!isWanted(community, await house.rules(community))) return
    const id = `digest ${community}`
    const before = await due.find(id)
    if (before && !before.isDone) return
    const dueAt = new Date(clock().getTime() + week_ms)
    await due.put({ id, kind: 'digest', person: '', place: community, body: {}, dueAt })
  }

  return {
    ensure,
    surfaces: noticeboard.reachable,
    begin: async () => {
      for (const community of (await house.everyones()).keys()) await ensure(community)
    },
    async note(community, one) {
      if (isWanted(community, rulesOf(community))) await noticed.add(community, clock(), one)
    },
    async work({ id, place: community }, now) {
      const { digest, moderatorsRoom } = await house.rules(community)
      if (digest === undefined || moderatorsRoom === undefined) return undefined
      const all = await noticed.of(community)
      const linked = (kind: Noticed['kind']) =>
        all.filter(one => one.kind === kind && one.link !== '').slice(-mostLinks)
      const links = [...linked('not understood'), ...linked('wrong')].map(({ link }) => link)
      const key = `${id} ${now.toISOString().slice(0, 10)}`
      await noticeboard.post(moderatorsRoom, { reply: digestReply(all, english('.')), key, links })
      await noticed.drop(community, now)
      return { again: new Date(now.getTime() + week_ms) }
    },
  }
}

/** Nothing was made of the question. */
export const isUnread = ({ problem, command, tooFast }: Reply): boolean =>
  problem !== undefined && (command === '' || command === 'handbook') && !tooFast

/** What of a reply a digest tells of; undefined where nothing. */
export function noticedOf(reply: Reply, { asked }: Pick<Occasion, 'asked'>): Noticed | undefined {
  const { verdict, reasons = [] } = reply
  const link = asked?.link ?? ''
  const [first] = reasons
  if (verdict === 'do not charge' && first !== undefined)
    return { kind: 'refused', about: Object.hasOwn(dangers, first) ? familyOf(first as Danger) : 'numbers', link }
  return isUnread(reply) ? { kind: 'not understood', about: '', link } : undefined
}
