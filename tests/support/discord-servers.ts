// The servers that a bot is in: that of the tests first, then others as clubs have them, of 15 channels each.

import { botMember, serverEvent } from './discord-events.ts'

const usualChannels = 15
const first = 710000000000000000n
/** Apart by so much, they fall on shards in turn. */
const apart = 1n << 22n

const idOf = (at: number): string => (at === 0 ? serverEvent.id : String(first + BigInt(at) * apart))
export const serverIds = (count: number): string[] => Array.from({ length: count }, (_, at) => idOf(at))

/** What a server tells when it is there. */
export function serverEventOf(id: string): object {
  if (id === serverEvent.id) return serverEvent
  const numbered = (kind: number, at: number) => String(BigInt(id) + BigInt(100 * kind + at))
  const roles = Array.from({ length: 10 }, (_, at) => ({
    ...serverEvent.roles[0],
    id: at === 0 ? id : numbered(1, at),
    name: `role number ${at}`,
    position: at,
  }))
  const channels = Array.from({ length: usualChannels }, (_, at) => ({
    id: numbered(2, at),
    guild_id: id,
    type: at % 5 === 0 ? 4 : at % 5 === 4 ? 2 : 0,
    name: `channel-${at}`,
    topic: 'What is said here, and what is said elsewhere: read the pinned message first',
    position: at,
    permission_overwrites: roles.slice(0, 2).map(role => ({ id: role.id, type: 0, allow: '1024', deny: '0' })),
    nsfw: false,
    rate_limit_per_user: 0,
    last_message_id: numbered(3, at),
    parent_id: at % 5 === 0 ? null : numbered(2, at - (at % 5)),
    flags: 0,
  }))
  const emojis = Array.from({ length: 20 }, (_, at) => ({
    id: numbered(4, at),
    name: `emoji${at}`,
    roles: [],
    require_colons: true,
    managed: false,
    animated: false,
    available: true,
  }))
  return { ...serverEvent, id, name: `Club ${id}`, roles, channels, emojis, members: [botMember] }
}

/** As `GET /users/@me/guilds` gives them: 200 at a time, in the order of their ids. */
export function pageOfServers(url: string, count: number): object[] {
  const query = new URL(url, 'http://discord').searchParams
  const [after, limit] = [BigInt(query.get('after') ?? 0), Math.min(200, Number(query.get('limit') ?? 200))]
  return serverIds(count)
    .filter(id => BigInt(id) > after)
    .slice(0, limit)
    .map(id => ({ id, name: `Club ${id}` }))
}
