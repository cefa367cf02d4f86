// Makes our device one that members see verified.

import type { MatrixClient } from 'matrix-js-sdk'
import { describeError, type Log } from '../../program/log.ts'
import type { MatrixSettings } from './settings.ts'

/**
 * Vouches for our device with keys of our account, so that members see it verified. An account that has such keys
 * from elsewhere keeps them; its owner verifies the device from there. Never rejects.
 */
export async function crossSign(client: MatrixClient, { login }: MatrixSettings, log: Log): Promise<void> {
  const crypto = client.getCrypto()
  try {
    if (!crypto || (await crypto.isCrossSigningReady())) return
    if (await crypto.userHasCrossSigningKeys(client.getSafeUserId(), true)) {
      log.warn('the Matrix account has a verified identity of its own: verify this device from another session of it')
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
    log.warn({ error: describeError(error) }, 'the Matrix device stays unverified: the server took no signing keys')
  }
}
