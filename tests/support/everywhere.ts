// The same assistant behind each surface, asked in a direct conversation by the surface's own way in.

import { vi } from 'vitest'
import { commands } from '../../commands/index.ts'
import type { SurfaceName } from '../../src/assistant/occasion.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import { createDiscordEndpoint } from '../../src/discord/endpoint.ts'
import { createDiscordGateway } from '../../src/discord/gateway.ts'
import { roomOccasion } from '../../src/room/occasion.ts'
import { renderText } from '../../src/room/render-text.ts'
import { message, slash } from './discord-events.ts'
import { keptLog, picture } from './discord-room.ts'
import { publicHex, signed } from './discord-signature.ts'
import { startFakeDiscord } from './fake-discord.ts'
import { fakeBoard } from './fake-noticeboard.ts'
import { openOnNock } from './matrix/on-nock.ts'
import { folded } from './rendered-text.ts'
import { openTestMemory } from './test-memory.ts'

export interface Way {
  /** The lines that are shown, and below them what can be tapped. */
  ask(question: string): Promise<readonly string[]>
  close(): Promise<void>
}

const patient = { timeout: 20_000, interval: 2 }

async function partsFor(surface: SurfaceName, clock: () => Date) {
  const memory = await openTestMemory()
  const { log } = keptLog()
  const assistant = createAssistant({
    commands,
    memory,
    clock,
    newSeed: () => 1,
    noticeboard: fakeBoard(surface).noticeboard,
    onFault: (fault, reference) => log.error({ fault: String(fault), reference }, 'fault'),
  })
  const { questions, answered, house } = memory
  return { assistant, memory, questions, answered, house, log, draw: async () => picture }
}

/** A reminder has a code of its own each time. */
const linesOf = (shown: string): readonly string[] =>
  shown.split('\n').map(line =>
    folded(line)
      .trim()
      .replace(/^[a-z2-9]{4}(?=: in )/, 'code'),
  )

export async function byRoom(clock: () => Date): Promise<Way> {
  const { assistant, memory } = await partsFor('room', clock)
  const occasion = roomOccasion()
  const asAda = { ...occasion, asker: { ...occasion.asker, name: 'Ada' } }
  return {
    ask: async question =>
      linesOf(renderText(await assistant.answer(question, asAda), { width: 10_000, colour: false })),
    close: () => memory.close(),
  }
}

interface Shown {
  readonly embeds: readonly { readonly description: string; readonly fields?: readonly { readonly value: string }[] }[]
}
const discordLines = ({ embeds: [embed] }: Shown): readonly string[] =>
  linesOf(
    [embed?.description, ...(embed?.fields ?? []).map(({ value }) => value)]
      .join('\n')
      .replaceAll('**', '')
      .replace(/\\(.)/g, '$1'),
  )

export async function byDiscord(clock: () => Date): Promise<Way> {
  const discord = await startFakeDiscord()
  const { memory, ...parts } = await partsFor('discord', clock)
  const surface = createDiscordGateway({ ...parts, api: discord.api, token: discord.token, onClosed: () => {} })
  await surface.start()
  return {
    async ask(question) {
      const before = discord.messages.length
      discord.gateway.dispatch('MESSAGE_CREATE', message(question, { direct: true }))
      return discordLines((await vi.waitUntil(() => discord.messages[before], patient)).body)
    },
    async close() {
      await surface.stop()
      await discord.close()
      await memory.close()
    },
  }
}

export async function byInteractions(clock: () => Date): Promise<Way> {
  const discord = await startFakeDiscord()
  const { memory, ...parts } = await partsFor('discord', clock)
  const endpoint = createDiscordEndpoint({ ...parts, api: discord.api, publicKey: publicHex, patience_ms: 20_000 })
  await endpoint.start()
  return {
    async ask(question) {
      const interaction = slash('ask', { question }, { direct: true })
      const asked = discord.expect(interaction)
      const body = JSON.stringify(interaction)
      const answer = await endpoint.route.answer({ headers: signed(body), body: Buffer.from(body) })
      // An answer with files comes by REST.
      return discordLines(
        answer.status === 200 ? JSON.parse(answer.body).data : (await asked.acknowledgement).body.data,
      )
    },
    async close() {
      await endpoint.stop()
      await discord.close()
      await memory.close()
    },
  }
}

export async function byMatrix(clock: () => Date): Promise<Way> {
  const { assistant, memory, log } = await partsFor('matrix', clock)
  const { say, sent, close } = await openOnNock(assistant, memory, log)
  return {
    async ask(question) {
      const before = sent().length
      say(question)
      return linesOf(String((await vi.waitUntil(() => sent()[before], patient)).body.body))
    },
    async close() {
      await close()
      await memory.close()
    },
  }
}
