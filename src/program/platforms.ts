// Which chat platforms the configuration names.

import type { Config } from './config.ts'

export const hasDiscord = (config: Config): boolean => Boolean(config.DISCORD_TOKEN || config.DISCORD_PUBLIC_KEY)
export const hasMatrix = (config: Config): boolean => Boolean(config.MATRIX_HOMESERVER)
export const hasPlatform = (config: Config): boolean => hasDiscord(config) || hasMatrix(config)
