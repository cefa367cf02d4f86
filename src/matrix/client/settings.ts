// What the Matrix surface needs from the configuration.

import { decodeRecoveryKey } from 'matrix-js-sdk/lib/crypto-api/recovery-key.js'
import { type Config, ConfigError } from '../../program/config.ts'

export interface MatrixSettings {
  readonly homeserver: string
  /** How to log in: a token of the account's own device, or name and password once. */
  readonly login: { readonly accessToken: string } | { readonly user: string; readonly password: string }
  /** Turned into the key that encrypts the stored message keys. */
  readonly storeKey: string
  /** Absent where nothing is kept outside the data folder. */
  readonly recoveryKey: string | undefined
  /** Who may verify us. */
  readonly verifiers: readonly string[]
  readonly deviceName: string
  readonly prefix: string
  /** "anyone", servers, or people. */
  readonly invites: readonly string[]
  /** By id or address: joined at the start, or knocked at. */
  readonly rooms: readonly string[]
  /** Accounts that are never answered. */
  readonly bots: readonly string[]
}

/** Undefined where Matrix is not configured. Throws a ConfigError where it is, but not enough. */
export function matrixSettings(config: Config): MatrixSettings | undefined {
  const { MATRIX_HOMESERVER: homeserver, MATRIX_STORE_KEY: storeKey } = config
  if (homeserver === undefined) return undefined
  if (storeKey === undefined) {
    throw new ConfigError('MATRIX_STORE_KEY: needed with MATRIX_HOMESERVER; it encrypts the message keys on disk')
  }
  return {
    homeserver,
    login: loginIn(config),
    storeKey,
    recoveryKey: recoveryKeyIn(config),
    verifiers: config.MATRIX_VERIFIERS,
    deviceName: config.MATRIX_DEVICE_NAME,
    prefix: config.MATRIX_PREFIX,
    invites: config.MATRIX_INVITES,
    rooms: config.MATRIX_ROOMS,
    bots: config.MATRIX_BOTS,
  }
}

function recoveryKeyIn({ MATRIX_RECOVERY_KEY: key }: Config): string | undefined {
  try {
    if (key !== undefined) privateKeyOf(key)
    return key
  } catch {
    throw new ConfigError('MATRIX_RECOVERY_KEY: not a recovery key; npm run -s matrix:recovery-key makes one')
  }
}

/** Throws where the key was mistyped. */
export const privateKeyOf = decodeRecoveryKey

function loginIn({
  MATRIX_ACCESS_TOKEN: accessToken,
  MATRIX_USER: user,
  MATRIX_PASSWORD: password,
}: Config): MatrixSettings['login'] {
  if (accessToken !== undefined) return { accessToken }
  if (user !== undefined && password !== undefined) return { user, password }
  throw new ConfigError(
    'MATRIX_ACCESS_TOKEN, or MATRIX_USER and MATRIX_PASSWORD: needed with MATRIX_HOMESERVER to log in',
  )
}
