// A real Discord surface on a fake Discord: the tiny commands, a memory, and a log that can be read.

import { Writable } from 'node:stream'
import { pino } from 'pino'
import { createNoticeboards } from '../../src/assistant/cards/noticeboard.ts'
import type { Entry } from '../../src/assistant/command.ts'
import { type Assistant, createAssistant } from '../../src/assistant/running/assistant.ts'
import { withFairUse } from '../../src/assistant/running/fair-use.ts'
import { createDiscordGateway } from '../../src/discord/gateway.ts'
import { createDiscordNoticeboard } from '../../src/discord/noticeboard.ts'
import type { Memory } from '../../src/memory/memory.ts'
import type { Log } from '../../src/program/log.ts'
import { bench, trayAdd, trayList } from './discord-commands.ts'
import { type FakeDiscord, type FakeRules, startFakeDiscord } from './fake-discord.ts'
import { openTestMemory } from './test-memory.ts'

/** A log that keeps its lines. */
export function keptLog(): { log: Log; text: () => string } {
  let text = ''
  const stream = new Writable({
    write(chunk, _encoding, done) {
      text += chunk
      done()
    },
  })
  return { log: pino({ level: 'debug' }, stream), text: () => text }
}

export const picture = new Uint8Array([0x89, 0x50, 0x4e, 0x47])

export interface DiscordRoom {
  readonly discord: FakeDiscord
  readonly memory: Memory
  readonly assistant: Assistant
  readonly logged: () => string
  /** A surface on the same Discord and memory, as after a restart. */
  readonly surface: () => ReturnType<typeof createDiscordGateway>
  /** What every surface needs. */
  readonly parts: () => Omit<Parameters<typeof createDiscordGateway>[0], 'token'>
  close(): Promise<void>
}

interface RoomRules extends FakeRules {
  readonly commands?: readonly Entry[]
  readonly patience_ms?: number
  readonly request_ms?: number
}

export async function openDiscordRoom({ commands = [], ...rules }: RoomRules = {}): Promise<DiscordRoom> {
  const discord = await startFakeDiscord(rules)
  const memory = await openTestMemory()
  const { log, text } = keptLog()
  const noticeboard = createNoticeboards()
  noticeboard.add('discord', createDiscordNoticeboard({ ...discord, questions: memory.questions }))
  const answering = createAssistant({
    commands: [bench, trayAdd, trayList, ...commands],
    memory,
    noticeboard,
    clock: () => new Date(),
    onFault: (_, reference) => log.error({ reference }, 'fault'),
  })
  const assistant = withFairUse(answering, Date.now)
  const parts = () => ({
    assistant,
    questions: memory.questions,
    answered: memory.answered,
    house: memory.house,
    draw: async () => picture,
    log,
    onClosed: (error: Error) => log.fatal(error.message),
    api: discord.api,
    ...(rules.patience_ms === undefined ? {} : { patience_ms: rules.patience_ms }),
    ...(rules.request_ms === undefined ? {} : { request_ms: rules.request_ms }),
  })
  const surfaces: ReturnType<typeof createDiscordGateway>[] = []
  return {
    discord,
    memory,
    assistant,
    logged: text,
    parts,
    surface: () => {
      const surface = createDiscordGateway({ ...parts(), token: discord.token })
      surfaces.push(surface)
      return surface
    },
    close: async () => {
      await Promise.all(surfaces.map(surface => surface.stop()))
      await discord.close()
      await memory.close()
    },
  }
}
