// Discord's door by HTTP as a host has it, with all commands, and requests that are signed or not.

import { generateKeyPairSync, sign } from 'node:crypto'
import { commands } from '../../commands/index.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import { createDiscordEndpoint } from '../../src/discord/endpoint.ts'
import { createHttpServer } from '../../src/http/server.ts'
import { keptLog, openDiscordRoom } from '../support/discord-room.ts'

export async function openWire() {
  const { privateKey, publicKey } = generateKeyPairSync('ed25519')
  const room = await openDiscordRoom()
  const { log, text } = keptLog()
  const faults: unknown[] = []
  const assistant = createAssistant({ commands, memory: room.memory, onFault: fault => faults.push(fault) })
  const endpoint = createDiscordEndpoint({
    ...room.parts(),
    assistant,
    log,
    publicKey: Buffer.from(publicKey.export({ format: 'jwk' }).x ?? '', 'base64url').toString('hex'),
    clock: () => new Date(),
  })
  await endpoint.start()
  const server = createHttpServer({ host: '127.0.0.1', port: 0 }, [endpoint.route], log)
  const url = `http://127.0.0.1:${await server.start()}`
  return {
    url,
    logged: text,
    faults,
    signed: (body: string) => {
      const timestamp = String(Math.floor(Date.now() / 1000))
      const signature = sign(null, Buffer.from(timestamp + body), privateKey).toString('hex')
      return { 'x-signature-ed25519': signature, 'x-signature-timestamp': timestamp }
    },
    close: async () => {
      await server.stop()
      await room.close()
    },
  }
}
