// Long lists of small numbers as text of a JSON file: compressed, then base 64.

import { brotliCompressSync, brotliDecompressSync } from 'node:zlib'

type List = Int8Array | Uint8Array | Uint16Array | Uint32Array

/** The same list gives the same text. */
export const packed = (list: List): string =>
  brotliCompressSync(new Uint8Array(list.buffer, list.byteOffset, list.byteLength)).toString('base64')

/** In a buffer of their own: numbers of several bytes must stand where so many divide the place. */
export const unpacked = (text: string): ArrayBuffer =>
  new Uint8Array(brotliDecompressSync(Buffer.from(text, 'base64'))).buffer
