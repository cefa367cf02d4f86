// Discord's door by HTTP as a host has it, with all commands.

import { commands } from '../../commands/index.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import { createDiscordEndpoint } from '../../src/discord/endpoint.ts'
import { createHttpServer } from '../../src/http/server.ts'
import { keptLog, openDiscordRoom } from '../support/discord-room.ts'
import { publicHex } from '../support/discord-signature.ts'

export async function openWire() {
  const room = await openDiscordRoom()
  const { log, text } = keptLog()
  const faults: unknown[] = []
  const assistant = createAssistant({ commands, memory: room.memory, onFault: fault => faults.push(fault) })
  const endpoint = createDiscordEndpoint({
    ...room.parts(),
    assistant,
    log,
    publicKey: publicHex,
    clock: () => new Date(),
  })
  await endpoint.start()
  const server = createHttpServer({ host: '127.0.0.1', port: 0 }, [endpoint.route], log)
  const url = `http://127.0.0.1:${await server.start()}`
  return {
    url,
    logged: text,
    faults,
    close: async () => {
      await server.stop()
      await room.close()
    },
  }
}
