// The Matrix client of one session, with encryption whose keys outlive the process.

import { scrypt } from 'node:crypto'
import { promisify } from 'node:util'
import { MatrixClient, MemoryStore } from 'matrix-js-sdk'
import { ConfigError } from '../../program/config.ts'
import { describeError, type Log } from '../../program/log.ts'
import { openLastingIndexedDB } from '../keys/lasting-indexeddb.ts'
import { quiet } from './quiet.ts'
import { keysFile, openSession } from './session.ts'
import { type MatrixSettings, privateKeyOf } from './settings.ts'

export interface OpenClient {
  readonly client: MatrixClient
  /** Stops the client and closes the keys. */
  close(): void
}

/** A connection may seem to live; a sync waits as long as it asked the server to, and some time more. */
const longestRequest_ms = 30_000

/**
 * Logs in where needed and opens the keys in `folder`. Rejects where the server does not let us in, or the stored
 * keys do not open with the configured key. `onLost` is told when keys could not be written to disk.
 */
export async function openClient(
  settings: MatrixSettings,
  folder: string,
  log: Log,
  onLost: (error: unknown) => void,
): Promise<OpenClient> {
  const session = await openSession(settings, folder, log)
  const client = new MatrixClient({
    baseUrl: session.homeserver,
    userId: session.userId,
    deviceId: session.deviceId,
    accessToken: session.accessToken,
    store: new MemoryStore(),
    localTimeoutMs: longestRequest_ms,
    cryptoCallbacks: { getSecretStorageKey: async ({ keys }) => opening(keys, settings.recoveryKey) },
    logger: quiet,
  })
  const keys = await openLastingIndexedDB(keysFile(folder), onLost)
  // The SDK's encryption finds its store by this name alone.
  Object.assign(globalThis, { indexedDB: keys.factory })
  try {
    await client.initRustCrypto({ storageKey: await storageKey(settings.storeKey, session.salt) })
  } catch (error) {
    keys.close()
    log.error({ error: describeError(error) }, 'the encryption could not be opened')
    throw new ConfigError(
      'MATRIX_STORE_KEY: does not open the stored message keys. Put back the former one; or, to begin as a new ' +
        `device that cannot read what was written to the old one, remove ${folder}.`,
    )
  }
  return {
    client,
    close: () => {
      client.stopClient()
      keys.close()
    },
  }
}

/** Which of the keys to the account's secret storage the recovery key is; whether it opens it is looked at before. */
function opening(keys: object, recoveryKey: string | undefined): [string, Uint8Array<ArrayBuffer>] | null {
  const [id] = Object.keys(keys)
  return id === undefined || recoveryKey === undefined ? null : [id, privateKeyOf(recoveryKey)]
}

const deriveKey = promisify<string, string, number, Buffer>(scrypt)

/** The SDK encrypts all that it stores with this key (XChaCha20-Poly1305). */
const storageKey = async (passphrase: string, salt: string): Promise<Uint8Array> =>
  new Uint8Array(await deriveKey(passphrase, salt, 32))
