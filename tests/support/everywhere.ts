// The same assistant behind each surface, asked by the surface's own way in.

import { vi } from 'vitest'
import { commands } from '../../commands/index.ts'
import { shelfOf } from '../../src/assistant/naming/shelf.ts'
import type { SurfaceName } from '../../src/assistant/occasion.ts'
import type { Registry } from '../../src/assistant/registry.ts'
import type { Reply } from '../../src/assistant/reply.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import { createDiscordEndpoint } from '../../src/discord/endpoint.ts'
import { createDiscordGateway } from '../../src/discord/gateway.ts'
import { present } from '../../src/ground/present.ts'
import { attempt } from '../../src/ground/problem.ts'
import { readTyped } from '../../src/language/sentence/typed.ts'
import { roomOccasion } from '../../src/room/occasion.ts'
import { renderLayer, renderText } from '../../src/room/render-text.ts'
import { buttonOf, firstLine } from './discord-answers.ts'
import { type Interaction, type MessageEvent, mentionOfBot, message, press, slash } from './discord-events.ts'
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
  /** What is cared for besides, opened below the last answer; undefined where that offers none, or this way opens none here. */
  care?(): Promise<readonly string[] | undefined>
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
      .replace(/^[a-z2-9]{4}(?=: in )/, 'code')
      .replace(/^[-•] /, ''),
  )

export async function byRoom(clock: () => Date): Promise<Way> {
  const { assistant, memory } = await partsFor('room', clock)
  const occasion = roomOccasion()
  const asAda = { ...occasion, asker: { ...occasion.asker, name: 'Ada' } }
  const rules = { width: 10_000, colour: false }
  let last: Reply | undefined
  return {
    ask: async question => {
      last = await assistant.answer(question, asAda)
      await assistant.settled()
      return linesOf(renderText(last, rules))
    },
    care: async () => last && linesOf(renderLayer(last, 'care', rules)),
    close: () => memory.close(),
  }
}

interface Shown {
  readonly components: Parameters<typeof buttonOf>[0]['components']
  readonly embeds: readonly { readonly description: string; readonly fields?: readonly { readonly value: string }[] }[]
}
const discordLines = ({ embeds: [embed] }: Shown): readonly string[] =>
  linesOf(
    [embed?.description, ...(embed?.fields ?? []).map(({ value }) => value)]
      .join('\n')
      .replaceAll('**', '')
      .replace(/\\(.)/g, '$1'),
  )

/** The press that opens it. */
function careOf(shown: Shown, where: Parameters<typeof press>[1]): Interaction | undefined {
  const isOffered = shown.components.some(row => row.components.some(({ label }) => label === 'Care'))
  return isOffered ? press(buttonOf(shown, 'Care'), where) : undefined
}

export const byDiscord = (clock: () => Date) => byMessages(clock, question => message(question, { direct: true }))
/** Where others read along; what is the asker's own comes in private. */
export const byMention = (clock: () => Date) =>
  byMessages(clock, question => message(`${mentionOfBot} ${question}`, { moderator: true }))

async function byMessages(clock: () => Date, asking: (question: string) => MessageEvent): Promise<Way> {
  const discord = await startFakeDiscord()
  const { memory, ...parts } = await partsFor('discord', clock)
  const surface = createDiscordGateway({ ...parts, api: discord.api, token: discord.token, onClosed: () => {} })
  await surface.start()
  const answers = () => discord.messages.map(({ body }) => body).filter(one => !/in private\.$/.test(firstLine(one)))
  return {
    async ask(question) {
      const before = answers().length
      discord.gateway.dispatch('MESSAGE_CREATE', asking(question))
      const answer = await vi.waitUntil(() => answers()[before], patient)
      await parts.assistant.settled()
      return discordLines(answer)
    },
    async care() {
      const pressed = careOf(answers().at(-1), { direct: true })
      return pressed && discordLines((await discord.send(pressed).acknowledgement).body.data)
    },
    async close() {
      await surface.stop()
      await discord.close()
      await memory.close()
    },
  }
}

export const byInteractions = (clock: () => Date) =>
  byEndpoint(clock, question => slash('ask', { question }, { direct: true }))
/** Option by option. */
export const bySlash = (clock: () => Date) =>
  byEndpoint(clock, (question, { vocabulary, get }) => {
    const typed = attempt(() => readTyped(question, vocabulary))?.question
    if (!typed) return slash('ask', { question }, { direct: true })
    const { family, sub } = shelfOf(get(typed.command))
    return slash(present([family, sub]).join(' '), typed.options, { direct: true })
  })

async function byEndpoint(
  clock: () => Date,
  asking: (question: string, registry: Registry) => Interaction,
): Promise<Way> {
  const discord = await startFakeDiscord()
  const { memory, ...parts } = await partsFor('discord', clock)
  const endpoint = createDiscordEndpoint({ ...parts, api: discord.api, publicKey: publicHex, patience_ms: 20_000 })
  await endpoint.start()
  async function answerTo(interaction: Interaction): Promise<Shown> {
    const asked = discord.expect(interaction)
    const body = JSON.stringify(interaction)
    const answer = await endpoint.route.answer({ headers: signed(body), body: Buffer.from(body) })
    // An answer with files comes by REST.
    return answer.status === 200 ? JSON.parse(answer.body).data : (await asked.acknowledgement).body.data
  }
  let last: Shown
  return {
    async ask(question) {
      last = await answerTo(asking(question, parts.assistant.registry))
      await parts.assistant.settled()
      return discordLines(last)
    },
    async care() {
      const pressed = careOf(last, { direct: true })
      return pressed && discordLines(await answerTo(pressed))
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
      const { body } = await vi.waitUntil(() => sent()[before], patient)
      await assistant.settled()
      return linesOf(String(body.body))
    },
    async close() {
      await close()
      await memory.close()
    },
  }
}
