// The program on a fake Discord, killed again and again while commands and mentions that change something come in, old ones
// again among them. INBOX_KILLS says how often.

import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { expect, test, vi } from 'vitest'
import type { Memory } from '../../../src/memory/memory.ts'
import { openMemory } from '../../../src/memory/opening/open.ts'
import { mentionOfBot, message, newId, pilot, slash } from '../../support/discord-events.ts'
import { type Asked, type FakeDiscord, startFakeDiscord } from '../../support/fake-discord.ts'
import { startProgram } from '../../support/program.ts'
import { testDatabaseUrl } from '../../support/test-memory.ts'

const kills = Number(process.env.INBOX_KILLS ?? 300)
const eachRound = 6
/**
 * A question whose process died is left alone for half a minute, then taken up by the loop, which looks every five seconds;
 * where that died too, two minutes later.
 */
const [patience_ms, longest_ms] = [45_000, 180_000]

interface Question {
  readonly person: string
  /** Of a message the way back stays open for a day; of a command it closes where Discord hears nothing for three seconds. */
  readonly staysOpen: boolean
  send(): void
  /** Discord has heard from us, and in the end: the answer. */
  heard(): boolean
  answers(): number
}

function command(discord: FakeDiscord): Question {
  const user = { ...pilot, id: newId() }
  const bare = slash('log charge', { name: 'wren', 'put-back': '640mAh' })
  const asking = { ...bare, member: { ...(bare.member as object), user } }
  let asked: Asked | undefined
  const told = () => (asked?.told ?? []).map(({ body }) => JSON.stringify(body) ?? '')
  return {
    person: user.id,
    staysOpen: false,
    send: () => {
      if (asked) discord.gateway.dispatch('INTERACTION_CREATE', asking)
      else asked = discord.send(asking)
    },
    heard: () => told().length > 0,
    answers: () => told().filter(body => body.includes('description')).length,
  }
}

function mention(discord: FakeDiscord): Question {
  const author = { ...pilot, id: newId() }
  const asking = message(`${mentionOfBot} log charge name: wren put-back: 640mAh`, { author })
  const answers = () => discord.messages.filter(({ body }) => body.message_reference?.message_id === asking.id).length
  return {
    person: author.id,
    staysOpen: true,
    send: () => discord.gateway.dispatch('MESSAGE_CREATE', asking),
    heard: () => answers() > 0,
    answers,
  }
}

interface Done {
  readonly one: Question
  readonly times: number
}
/** Of a message whatever was done is answered; of a command what Discord has heard from us about. */
const isMissing = ({ one, times }: Done) =>
  one.staysOpen ? one.heard() !== times > 0 : one.heard() && (times === 0 || one.answers() === 0)

const ownerOf = ({ person }: Question) => ({ scope: 'person', id: `discord:${person}` }) as const
const timesDone = async (memory: Memory, one: Question) => (await memory.log.of(ownerOf(one), 'wren')).length

test('killed while Discord asks, it does all once and answers whom it can', { timeout: 3_600_000 }, async () => {
  const discord = await startFakeDiscord()
  const folder = await mkdtemp(join(tmpdir(), 'discord-kill-'))
  const databaseUrl = await testDatabaseUrl()
  const memory = await openMemory({ dataFolder: folder, databaseUrl })
  const env = {
    CHARGEHAND_DATA: folder,
    DISCORD_TOKEN: discord.token,
    DISCORD_API: discord.api,
    ...(databaseUrl ? { DATABASE_URL: databaseUrl } : {}),
  }
  const start = async () => {
    const program = startProgram(env)
    const started = () => expect(program.errors()).toContain('"ready"')
    await vi.waitFor(started, { timeout: 30_000, interval: 20 })
    return program
  }
  const newQuestions = async () => {
    const fresh = Array.from({ length: eachRound }, (_, at) => (at % 2 ? command(discord) : mention(discord)))
    for (const one of fresh)
      await memory.kit.save({ owner: ownerOf(one), name: 'wren', kind: 'pack', notation: '3S 720mAh LiHV' }, 1)
    return fresh
  }
  /** The first questions of a process take it longest; how long, hangs on what else the machine does. */
  const longestAsking = async () => {
    const [fresh, program] = [await newQuestions(), await start()]
    const since = performance.now()
    for (const one of fresh) one.send()
    await vi.waitFor(() => expect(fresh.every(one => one.answers() > 0)).toBe(true), { timeout: 30_000, interval: 5 })
    const took_ms = performance.now() - since
    await program.kill()
    // With some of the last rounds more are asked at once.
    return 2 * took_ms
  }
  const all: Question[] = []
  let replays = 0
  try {
    const longestAsking_ms = await longestAsking()
    for (let round = 0; round < kills; round += 1) {
      const fresh = await newQuestions()
      const program = await start()
      const old = all.slice(-3 * eachRound).filter(one => !one.heard() || Math.random() < 0.2)
      replays += old.length
      all.push(...fresh)
      for (const one of [...old, ...fresh].toSorted(() => Math.random() - 0.5)) one.send()
      await pause(Math.random() * longestAsking_ms)
      await program.kill()
    }
    const program = await start()
    const allDone = () => Promise.all(all.map(async one => ({ one, times: await timesDone(memory, one) })))
    const until_ms = performance.now() + longest_ms
    await pause(patience_ms)
    while ((await allDone()).some(isMissing) && performance.now() < until_ms) await pause(1000)
    await program.kill()
    const done = await allDone()
    const [doubled, once] = [done.filter(({ times }) => times > 1), done.filter(({ times }) => times === 1)]
    const missing = done.filter(isMissing)
    const closed = once.filter(({ one }) => one.answers() === 0)
    process.stdout.write(
      `killed ${kills} times on Discord: ${all.length} questions, ${replays} replays, ${once.length} done, ${doubled.length} doubled, ${missing.length} answers missing, ${missing.filter(({ times }) => times === 0).length} of them promised and never begun, ${closed.length} done whose way back had closed\n`,
    )
    expect([doubled, missing].map(({ length }) => length)).toEqual([0, 0])
    // Else it was killed before it had begun.
    expect(once.length).toBeGreaterThan(all.length / 10)
    expect(discord.refused.filter(refusal => !/Unknown (?:Webhook|Message)/.test(refusal))).toEqual([])
  } finally {
    await memory.close()
    await discord.close()
    await rm(folder, { recursive: true })
  }
})
