// What the bot may do in a channel, by its roles and what the channel says otherwise.

import { botMember, permission, serverEvent } from './discord-events.ts'

/** https://docs.discord.com/developers/topics/permissions#permission-overwrites: everyone's first, then those of roles together. */
export function mayBot(channel: string, what: keyof typeof permission): boolean {
  const { id: everyone, roles, channels } = serverEvent
  const found = channels.find(one => one.id === channel)
  // Of other servers, and direct ones, nothing is withheld.
  if (!found) return true
  const held = [everyone, ...botMember.roles]
  const sum = (bits: readonly string[]) => bits.reduce((all, one) => all | BigInt(one), 0n)
  let may = sum(roles.filter(({ id }) => held.includes(id)).map(one => one.permissions))
  for (const some of [[everyone], botMember.roles]) {
    const said = found.permission_overwrites.filter(({ id }) => some.includes(id))
    may = (may & ~sum(said.map(({ deny }) => deny))) | sum(said.map(({ allow }) => allow))
  }
  return (may & permission[what]) !== 0n
}
