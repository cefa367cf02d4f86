// Discord's channels by REST: messages, edits, pins and direct messages, with their rules and nothing else.

import type { permission } from './discord-events.ts'
import { newId } from './discord-events.ts'
import { faultsOf } from './discord-payload.ts'

// biome-ignore lint/suspicious/noExplicitAny: bodies are judged by the payload checks.
type Json = any

export type Answered = [status: number, body?: Json]

/** What came with a request. */
export interface Arrived {
  readonly body: Json
  readonly files: readonly Buffer[]
  /** When its request came, on the clock of `performance.now()`. */
  readonly at: number
}

export interface FakeMessage {
  readonly id: string
  readonly channel: string
  /** As it is now. */
  body: Json
  files: readonly Buffer[]
  readonly at: number
  pinned: boolean
  edits: number
}

export interface ChannelRules {
  readonly server: string
  readonly isChannel: (id: string) => boolean
  /** Whether the bot may; anything where absent. */
  readonly may?: (channel: string, what: keyof typeof permission) => boolean
  readonly refuse: (status: number, code: number, message: string) => [number, Json]
  /** Whether payloads are judged. */
  readonly judging?: boolean
}

export interface Channels {
  readonly messages: FakeMessage[]
  /** Messages of other people. */
  readonly others: Set<string>
  /**
   * The code with which a kind of request is refused whatever is allowed, as Discord's `code` in a 403:
   * https://docs.discord.com/developers/topics/opcodes-and-status-codes#json
   */
  readonly denied: { see?: number; write?: number; pin?: number; direct?: number }
  /** Undefined where the request is none of channels. */
  route(what: string, arrived: Arrived): Answered | undefined
}

/** Everybody's direct channel has their id with a 9 before it. */
export function createChannels({
  server,
  isChannel,
  may = () => true,
  refuse,
  judging = true,
}: ChannelRules): Channels {
  const messages: FakeMessage[] = []
  const denied: Channels['denied'] = {}
  const others: Channels['others'] = new Set()
  const direct = new Set<string>()
  const nonces = new Map<string, Json>()

  const forbidden = (code: number, message: string): Answered => [403, { code, message }]
  const unknown = (code: number, what: string): Answered => [404, { code, message: `Unknown ${what}` }]
  const judged = (kind: 'message' | 'messageEdit', body: Json) => {
    const faults = judging ? faultsOf(kind, body) : []
    // https://docs.discord.com/developers/resources/message#create-message
    if (body.nonce !== undefined && String(body.nonce).length > 25) faults.push('nonce: at most 25 characters')
    return faults.length > 0 ? refuse(400, 50035, `Invalid Form Body: ${faults.join('; ')}`) : undefined
  }

  function post(channel: string, { body, files, at }: Arrived): Answered {
    const code = direct.has(channel) ? denied.direct : denied.write
    const { embeds = [], message_reference } = body
    const lacks =
      !may(channel, 'sendMessages') ||
      (embeds.length > 0 && !may(channel, 'embedLinks')) ||
      (files.length > 0 && !may(channel, 'attachFiles'))
    if (code || lacks) return forbidden(code ?? 50013, 'Missing Permissions')
    if (message_reference && !may(channel, 'readHistory'))
      return forbidden(160002, 'Cannot reply without permission to read message history')
    const fault = judged('message', body)
    if (fault) return fault
    const earlier = body.enforce_nonce ? nonces.get(body.nonce) : undefined
    if (earlier) return [200, earlier]
    const answer = { id: newId(), channel_id: channel }
    if (body.enforce_nonce) nonces.set(body.nonce, answer)
    messages.push({ id: answer.id, channel, body, files, at, pinned: false, edits: 0 })
    return [200, answer]
  }

  /** https://docs.discord.com/developers/resources/message#edit-message: what is not named stays, and so do its pins. */
  function edit(message: FakeMessage, { body, files }: Arrived): Answered {
    const fault = judged('messageEdit', body)
    if (fault) return fault
    message.body = { ...message.body, ...body }
    message.files = files
    message.edits += 1
    return [200, { id: message.id, channel_id: message.channel }]
  }

  return {
    messages,
    others,
    denied,
    route: (what, arrived) => {
      const match = (pattern: RegExp) => pattern.exec(what)?.slice(1) as string[] | undefined
      if (what === 'POST /users/@me/channels') {
        const id = `9${arrived.body.recipient_id}`
        direct.add(id)
        return [200, { id, type: 1 }]
      }
      const [method, channel = '', rest = ''] = match(/^([A-Z]+) \/channels\/(\d+)(.*)$/) ?? []
      if (method === undefined) return undefined
      const isDirect = direct.has(channel)
      if (!isDirect && !isChannel(channel)) return unknown(10003, 'Channel')
      const isClosed = denied.see || !may(channel, 'viewChannel')
      if (isClosed && !isDirect) return forbidden(denied.see ?? 50001, 'Missing Access')
      if (method === 'GET' && rest === '')
        return [200, isDirect ? { id: channel, type: 1 } : { id: channel, type: 0, guild_id: server }]
      if (method === 'POST' && rest === '/messages') return post(channel, arrived)

      const [, pins, id] = /^\/messages(\/pins)?\/(\d+)$/.exec(rest) ?? []
      if (id === undefined) return undefined
      const message = messages.find(one => one.id === id && one.channel === channel)
      if (!message) return unknown(10008, 'Message')
      if (pins !== undefined) {
        if (method !== 'PUT') return undefined
        if (denied.pin || !may(channel, 'pinMessages')) return forbidden(denied.pin ?? 50013, 'Missing Permissions')
        message.pinned = true
        return [204]
      }
      // https://docs.discord.com/developers/topics/opcodes-and-status-codes#json
      if (method === 'PATCH' && others.has(id))
        return forbidden(50005, 'Cannot edit a message authored by another user')
      if (method === 'PATCH') return edit(message, arrived)
      if (method === 'GET') return [200, { id, channel_id: channel, ...message.body }]
      if (method !== 'DELETE') return undefined
      // https://docs.discord.com/developers/resources/message#delete-message
      if (others.has(id) && !may(channel, 'manageMessages')) return forbidden(50013, 'Missing Permissions')
      messages.splice(messages.indexOf(message), 1)
      return [204]
    },
  }
}
