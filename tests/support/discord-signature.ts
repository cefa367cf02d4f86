// Requests as Discord signs them, with a key of our own.

import { generateKeyPairSync, type KeyObject, sign } from 'node:crypto'

const { privateKey, publicKey } = generateKeyPairSync('ed25519')

export const publicHex = Buffer.from(publicKey.export({ format: 'jwk' }).x ?? '', 'base64url').toString('hex')

const nowSeconds = () => String(Math.floor(Date.now() / 1000))

/** The headers that go with the body. */
export const signed = (body: string, { timestamp = nowSeconds(), key = privateKey as KeyObject } = {}) => ({
  'x-signature-ed25519': sign(null, Buffer.from(timestamp + body), key).toString('hex'),
  'x-signature-timestamp': timestamp,
})
