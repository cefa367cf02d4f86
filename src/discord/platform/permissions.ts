// The permissions that we need in a server, for the invite link and for the check before a reply.

import { OAuth2Scopes, PermissionsBitField, type PermissionsString } from 'discord.js'

/** Slash commands need none of them; answers to mentions do. */
const forMentions: readonly PermissionsString[] = [
  'ViewChannel',
  'SendMessages',
  'SendMessagesInThreads',
  'EmbedLinks',
  'AttachFiles',
  'ReadMessageHistory',
]

/** Cards of standard answers are pinned; without it they stand unpinned. */
const forCards: PermissionsString = 'PinMessages'

export function neededPermissions(inThread: boolean): readonly PermissionsString[] {
  const other = inThread ? 'SendMessages' : 'SendMessagesInThreads'
  return forMentions.filter(permission => permission !== other)
}

/** Where a server's moderator lets us in. */
export function inviteLink(applicationId: string): string {
  const link = new URL('https://discord.com/oauth2/authorize')
  link.searchParams.set('client_id', applicationId)
  link.searchParams.set('scope', [OAuth2Scopes.Bot, OAuth2Scopes.ApplicationsCommands].join(' '))
  link.searchParams.set('permissions', String(new PermissionsBitField([...forMentions, forCards]).bitfield))
  return link.href
}
