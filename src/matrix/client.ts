// The Matrix client of one session, with encryption whose keys outlive the process.

import { scrypt } from 'node:crypto'
import { promisify } from 'node:util'
import { MatrixClient, MemoryStore } from 'matrix-js-sdk'
import type { Log } from '../log.ts'
import { describeError } from '../log.ts'
import { openLastingIndexedDB } from './keys/lasting-indexeddb.ts'
import { quiet } from './quiet.ts'
import { keysFile, openSession } from './session.ts'
import type { MatrixSettings } from './settings.ts'

export interface OpenClient {
  readonly client: MatrixClient
  /** Stops the client and closes the keys. */
  close(): void
}

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
    logger: quiet,
  })
  const keys = await openLastingIndexedDB(keysFile(folder), onLost)
  // The SDK's encryption finds its store by this name alone.
  Object.assign(globalThis, { indexedDB: keys.factory })
  try {
    await client.initRustCrypto({ storageKey: await storageKey(settings.storeKey, session.salt) })
  } catch (error) {
    keys.close()
    throw new Error(
      'The stored message keys do not open. Put back the former MATRIX_STORE_KEY; or, to begin as a new device ' +
        `that cannot read what was written to the old one, remove ${folder}.`,
      { cause: error },
    )
  }
  await crossSign(client, settings, log)
  return {
    client,
    close: () => {
      client.stopClient()
      keys.close()
    },
  }
}

const deriveKey = promisify<string, string, number, Buffer>(scrypt)

/** The SDK encrypts all that it stores with this key (XChaCha20-Poly1305). */
const storageKey = async (passphrase: string, salt: string): Promise<Uint8Array> =>
  new Uint8Array(await deriveKey(passphrase, salt, 32))

/**
 * Vouches for our device with keys of our account, so that members see it verified. An account that has such keys
 * from elsewhere keeps them; its owner verifies the device from there.
 */
async function crossSign(client: MatrixClient, { login }: MatrixSettings, log: Log): Promise<void> {
  const crypto = client.getCrypto()
  try {
    if (!crypto || (await crypto.isCrossSigningReady())) return
    if (await crypto.userHasCrossSigningKeys(client.getSafeUserId(), true)) {
      log.warn(
        'the Matrix account has a verified identity of its own: verify this device from another session of it',
      )
      return
    }
    await crypto.bootstrapCrossSigning({
      authUploadDeviceSigningKeys: async upload => {
        await upload(
          'user' in login
            ? {
                type: 'm.login.password',
                identifier: { type: 'm.id.user', user: login.user },
                password: login.password,
              }
            : null,
        )
      },
    })
  } catch (error) {
    log.warn(
      { error: describeError(error) },
      'the Matrix device stays unverified: the server took no signing keys',
    )
  }
}
