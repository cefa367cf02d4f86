// Whether a request really comes from Discord: Ed25519 over the timestamp and the raw body, in a thread of Node's own. It is
// the dearest part of a question that was asked before, and our own thread has others to answer meanwhile.

import { createPublicKey, type KeyObject, verify } from 'node:crypto'
import { promisify } from 'node:util'

const verified = promisify(verify)

/** From the 64 hexadecimal digits that Discord shows for an application. */
export function publicKeyOf(hex: string): KeyObject {
  const x = Buffer.from(hex, 'hex').toString('base64url')
  return createPublicKey({ key: { kty: 'OKP', crv: 'Ed25519', x }, format: 'jwk' })
}

export interface Signed {
  readonly signature: string | undefined
  /** Seconds since 1970, as sent. */
  readonly timestamp: string | undefined
  readonly body: Buffer
}

/**
 * An interaction lives three seconds, so an honest request is young; a minute leaves room for clocks that
 * differ, and bounds how long a captured request could be sent again.
 */
const longestAge_s = 60

/** Discord's rule: https://docs.discord.com/developers/interactions/overview#setting-up-an-endpoint */
export async function isFromDiscord(
  { signature, timestamp, body }: Signed,
  key: KeyObject,
  now: Date,
): Promise<boolean> {
  if (!signature || !timestamp) return false
  if (!/^[0-9a-f]{128}$/i.test(signature) || !/^\d{1,12}$/.test(timestamp)) return false
  if (Math.abs(now.getTime() / 1000 - Number(timestamp)) > longestAge_s) return false
  return verified(null, Buffer.concat([Buffer.from(timestamp), body]), key, Buffer.from(signature, 'hex'))
}
