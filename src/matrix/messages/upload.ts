// Puts a file where members of a room can fetch it; encrypted where the room is.

import type { MatrixClient, Room } from 'matrix-js-sdk'
import type { Persistence } from '../../ground/persistence.ts'
import { type EncryptedFile, encryptAttachment } from './attachment.ts'

/** The part of a message that says where its file is. */
type Place = { readonly url: string } | { readonly file: EncryptedFile & { readonly url: string } }
export type Upload = (content: Uint8Array, mimetype: string, room: Room) => Promise<Place>

export function createUpload(client: MatrixClient, persistence: Persistence): Upload {
  return async (content, mimetype, room) => {
    if (!room.hasEncryptionStateEvent()) return { url: await send(new Uint8Array(content), mimetype) }
    const { bytes, file } = encryptAttachment(content)
    return { file: { ...file, url: await send(bytes, 'application/octet-stream') } }
  }

  async function send(bytes: Uint8Array<ArrayBuffer>, type: string): Promise<string> {
    const sent = await persistence.run(() => client.uploadContent(new Blob([bytes]), { type, includeFilename: false }))
    return sent.content_uri
  }
}
