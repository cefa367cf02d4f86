// The chat platforms that the configuration may name. What one needs is loaded only where it is named.

import { join } from 'node:path'
import type { Surface } from './assistant/running/assistant.ts'
import type { Route } from './http/server.ts'
import type { Config } from './program/config.ts'
import type { Log } from './program/log.ts'
import type { Opened } from './program/open-assistant.ts'
import type { Workers } from './program/workers/workers.ts'

export interface PlatformParts extends Opened {
  readonly config: Config
  readonly draw: Workers['draw']
  readonly log: Log
  /** For good, where no new try would heal it. */
  readonly onClosed: (error: unknown) => void
}

interface Platform {
  isNamed(config: Config): boolean
  /** Its way in, unless only its board is wanted, with what is to hear on our HTTP port; puts up its board. */
  open(parts: PlatformParts): Promise<{ readonly surface?: Surface | undefined; readonly routes?: readonly Route[] }>
}

export const discord: Platform = {
  isNamed: ({ DISCORD_TOKEN, DISCORD_PUBLIC_KEY }) => Boolean(DISCORD_TOKEN || DISCORD_PUBLIC_KEY),
  async open(parts) {
    const { config, memory, noticeboard } = parts
    const { createDiscordSurface } = await import('./discord/surface.ts')
    const { createDiscordNoticeboard } = await import('./discord/noticeboard.ts')
    const { DISCORD_API: api, DISCORD_TOKEN: token } = config
    if (token !== undefined)
      noticeboard.add('discord', createDiscordNoticeboard({ api, token, questions: memory.questions }))
    const surface = createDiscordSurface(parts)
    return { surface, routes: surface?.routes }
  },
}

export const matrix: Platform = {
  isNamed: ({ MATRIX_HOMESERVER }) => Boolean(MATRIX_HOMESERVER),
  async open(parts) {
    const { config, memory, noticeboard, onClosed } = parts
    const { matrixSettings } = await import('./matrix/client/settings.ts')
    const { createMatrixSurface } = await import('./matrix/surface.ts')
    const { createMatrixNoticeboard } = await import('./matrix/noticeboard.ts')
    const settings = matrixSettings(config)
    if (!settings) return {}
    const folder = join(config.CHARGEHAND_DATA, 'matrix')
    const surface = createMatrixSurface({ ...parts, settings, folder, answered: memory.answered }, onClosed)
    noticeboard.add('matrix', createMatrixNoticeboard(surface.session))
    return { surface }
  },
}

const platforms = [discord, matrix]

export const namedIn = (config: Config): readonly Platform[] => platforms.filter(({ isNamed }) => isNamed(config))
