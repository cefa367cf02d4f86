// Encrypts a file for an encrypted room: https://spec.matrix.org/v1.15/client-server-api/#sending-encrypted-attachments

import { createCipheriv, createHash, randomBytes } from 'node:crypto'

/** What a reader needs besides the encrypted bytes, save where they are. */
export interface EncryptedFile {
  readonly v: 'v2'
  readonly key: {
    readonly kty: 'oct'
    readonly alg: 'A256CTR'
    readonly ext: true
    readonly key_ops: readonly string[]
    readonly k: string
  }
  readonly iv: string
  readonly hashes: { readonly sha256: string }
}

export function encryptAttachment(plain: Uint8Array): { bytes: Uint8Array<ArrayBuffer>; file: EncryptedFile } {
  const key = randomBytes(32)
  // The counter's lower half starts at zero, so that it cannot overflow.
  const iv = Buffer.concat([randomBytes(8), Buffer.alloc(8)])
  const bytes = new Uint8Array(createCipheriv('aes-256-ctr', key, iv).update(plain))
  return {
    bytes,
    file: {
      v: 'v2',
      key: { kty: 'oct', alg: 'A256CTR', ext: true, key_ops: ['encrypt', 'decrypt'], k: key.toString('base64url') },
      iv: unpadded(iv),
      hashes: { sha256: unpadded(createHash('sha256').update(bytes).digest()) },
    },
  }
}

const unpadded = (bytes: Buffer): string => bytes.toString('base64').replace(/=+$/, '')
