// Makes our device one that members see verified, and keeps outside the data folder what makes the next one so.

import type { MatrixClient } from 'matrix-js-sdk'
import type { CryptoApi } from 'matrix-js-sdk/lib/crypto-api/index.js'
import { describeError, type Log } from '../../program/log.ts'
import { type MatrixSettings, privateKeyOf } from './settings.ts'

/**
 * Vouches for our device with keys of our account, so that members see it verified. With a recovery key those keys, and
 * those of messages, are kept on the server, readable by that key alone: a device that has lost all takes them up again.
 * Without one, an account that has keys from elsewhere keeps them; its owner verifies the device from there. Never rejects.
 */
export async function secureIdentity(client: MatrixClient, settings: MatrixSettings, log: Log): Promise<void> {
  const crypto = client.getCrypto()
  if (!crypto) return
  try {
    const { ed25519 } = await crypto.getOwnDeviceKeys()
    log.info({ device: client.getDeviceId(), fingerprint: inFours(ed25519) }, 'the fingerprint of our Matrix device')
    const recovery = await openedBy(client, settings.recoveryKey)
    if (settings.recoveryKey !== undefined && !recovery)
      log.error('MATRIX_RECOVERY_KEY does not open what the account keeps on the server: nothing is recovered by it')
    const isKept = recovery === 'opens' && (await client.secretStorage.isStored('m.cross_signing.master')) !== null
    await crossSign(client, crypto, settings, isKept, log)
    if (recovery) await keepOutside(crypto, settings)
  } catch (error) {
    log.warn({ error: describeError(error) }, 'the Matrix device may stay unverified, or its keys be kept nowhere else')
  }
}

/** As apps show it. */
const inFours = (key: string): string => key.replace(/.{4}(?=.)/g, '$& ')

/** Whether the recovery key opens the account's secret storage, or is to open one that is not there yet. */
async function openedBy(client: MatrixClient, recoveryKey: string | undefined): Promise<'opens' | 'new' | undefined> {
  if (recoveryKey === undefined) return undefined
  const there = await client.secretStorage.getKey()
  if (!there) return 'new'
  return (await client.secretStorage.checkKey(privateKeyOf(recoveryKey), there[1])) ? 'opens' : undefined
}

async function crossSign(
  client: MatrixClient,
  crypto: CryptoApi,
  { login }: MatrixSettings,
  isKept: boolean,
  log: Log,
): Promise<void> {
  if (await crypto.isCrossSigningReady()) return
  if (!isKept && (await crypto.userHasCrossSigningKeys(client.getSafeUserId(), true))) {
    log.warn('the Matrix account has a verified identity of its own: verify this device from another session of it')
    return
  }
  await crypto.bootstrapCrossSigning({
    authUploadDeviceSigningKeys: async upload => {
      const identifier = 'user' in login && { type: 'm.id.user', user: login.user }
      await upload(identifier ? { type: 'm.login.password', identifier, password: login.password } : null)
    },
  })
}

/** Signing keys in secret storage, message keys in a backup; what is there is taken up. */
async function keepOutside(crypto: CryptoApi, { recoveryKey = '' }: MatrixSettings): Promise<void> {
  const privateKey = privateKeyOf(recoveryKey)
  await crypto.bootstrapSecretStorage({
    createSecretStorageKey: async () => ({ privateKey, encodedPrivateKey: recoveryKey }),
    setupNewKeyBackup: (await crypto.getKeyBackupInfo()) === null,
  })
  if ((await crypto.getSessionBackupPrivateKey()) === null) await crypto.loadSessionBackupPrivateKeyFromSecretStorage()
  await crypto.checkKeyBackupAndEnable()
}
