// Discord as the configuration wants it: by gateway, by HTTP, or not at all.

import type { Draw } from '../assistant/draw.ts'
import type { Assistant, Surface } from '../assistant/running/assistant.ts'
import type { Route } from '../http/server.ts'
import type { Memory } from '../memory/memory.ts'
import type { Config } from '../program/config.ts'
import type { Log } from '../program/log.ts'
import { createDiscordEndpoint } from './endpoint.ts'
import { createDiscordGateway } from './gateway.ts'

export interface DiscordSurfaceParts {
  readonly config: Config
  readonly assistant: Assistant
  readonly memory: Pick<Memory, 'questions' | 'answered' | 'house'>
  readonly draw: Draw
  readonly log: Log
  readonly onClosed: (error: Error) => void
}

/** `routes` are for the HTTP server that the program has anyway. */
export interface DiscordSurface extends Surface {
  readonly routes: readonly Route[]
}

/** Undefined where no token, and no key for requests, is configured. */
export function createDiscordSurface({
  config,
  memory,
  onClosed,
  ...rest
}: DiscordSurfaceParts): DiscordSurface | undefined {
  const parts = { ...rest, questions: memory.questions, api: config.DISCORD_API }
  if (config.DISCORD_INTERACTIONS === 'http') {
    const publicKey = config.DISCORD_PUBLIC_KEY
    if (publicKey === undefined) return undefined
    const endpoint = createDiscordEndpoint({ ...parts, publicKey })
    return { ...endpoint, routes: [endpoint.route] }
  }
  if (config.DISCORD_TOKEN === undefined) return undefined
  const gateway = createDiscordGateway({
    ...parts,
    answered: memory.answered,
    house: memory.house,
    token: config.DISCORD_TOKEN,
    serverId: config.DISCORD_SERVER_ID,
    shards: config.CHARGEHAND_SHARDS,
    onClosed,
  })
  return { ...gateway, routes: [] }
}
