// Two replicas of the program on one PostgreSQL, their clocks apart, one of them killed again and again: every change is done
// once though both are asked, every reminder is given once, and every card stands once. LOAD says how much of it.

import { setTimeout as pause } from 'node:timers/promises'
import { expect, test, vi } from 'vitest'
import { openMemory } from '../../../src/memory/opening/open.ts'
import { moderatorPermissions, newId, slash } from '../../support/discord-events.ts'
import { startFakeChannels } from '../../support/fake-channels.ts'
import { type Endpoint, startOurs } from '../../support/load/endpoints.ts'
import { askedBy, pump, signedRequest } from '../../support/load/requests.ts'
import { findPostgres, startPostgres } from '../../support/postgres.ts'

const share = Number(process.env.LOAD ?? 1)
const kills = Math.ceil(20 * share)
const eachRound = 10
const reminders = Math.ceil(600 * share)
/** Within the minute that a signature lives. The third takes over at once what a killed one has left behind. */
const [ahead_s, behind_s, farAhead_s] = [20, -20, 150]
const club = askedBy(slash('help'), 0)
const channel = String(club.channel_id)

test('done once by two', { timeout: 900_000 }, async context => {
  const folder = findPostgres()
  if (folder === undefined) {
    process.stdout.write('skipped: two replicas on PostgreSQL, because initdb and postgres are not installed\n')
    return context.skip()
  }
  const server = await startPostgres(folder)
  const discord = await startFakeChannels(String(club.guild_id), [channel])
  const memory = await openMemory({ dataFolder: ':memory:', databaseUrl: server.url })
  const env = { DATABASE_URL: server.url, DISCORD_API: discord.api, DISCORD_TOKEN: discord.token }
  const running = new Set<Endpoint>()
  const start = async (by_s: number) => {
    const one = await startOurs(env, by_s)
    running.add(one)
    return one
  }
  const kill = async (one: Endpoint) => {
    await one.program.kill()
    running.delete(one)
  }
  const person = (number: number) => `discord:${600000000003000000n + BigInt(number)}`
  try {
    const staying = await start(ahead_s)
    let other = await start(behind_s)
    const now = new Date()
    const due = Array.from({ length: reminders }, (_, at) => ({
      id: `reminder ${at}`,
      code: 'r1',
      person: person(100_000 + at),
      place: `discord:${channel}`,
      channel: 'here' as const,
      kind: 'end' as const,
      about: '',
      setAt: now,
      dueAt: new Date(now.getTime() + ((at % 30) - 10) * 1000),
      low_s: 0,
      high_s: 0,
    }))
    await memory.reminders.add(due, reminders)
    const asked: number[] = []
    let acknowledged = 0
    for (let round = 0; round < kills; round++) {
      const fresh = Array.from({ length: eachRound }, (_, at) => round * eachRound + at)
      asked.push(...fresh)
      for (const number of fresh)
        await memory.kit.save(
          { owner: { scope: 'person', id: person(number) }, name: 'wren', kind: 'pack', notation: '3S 720mAh LiHV' },
          1,
        )
      const requests = fresh.map(number =>
        signedRequest(askedBy(slash('log charge', { name: 'wren', 'put-back': '640mAh' }), number)),
      )
      const both = [staying, other].map(({ port }) => pump(port, requests, 4).catch(() => []))
      await pause(Math.random() * 300)
      await kill(other)
      const [answers = []] = await Promise.all(both)
      acknowledged += answers.filter(({ status }) => status === 200).length
      other = await start(behind_s)
    }
    const cards = Array.from({ length: 5 }, (_, at) => {
      const options = { title: `wren ${at}`, question: 'current pack: 3S 720 LiHV' }
      return [
        slash('answer save', options, { permissions: moderatorPermissions }),
        slash('answer post', { title: `wren ${at}` }, { permissions: moderatorPermissions }),
      ] as const
    })
    for (const [save, post] of cards)
      for (const event of [save, post]) {
        const request = [signedRequest({ ...askedBy(event, 0), id: newId() })]
        await Promise.all([staying, other].map(({ port }) => pump(port, request, 1)))
      }
    const late = await start(farAhead_s)
    const given = () => discord.messages.filter(({ body }) => body.content !== undefined)
    await vi.waitFor(() => expect(given().length).toBeGreaterThanOrEqual(reminders), {
      timeout: 120_000,
      interval: 500,
    })
    await pause(12_000)

    const times = await Promise.all(
      asked.map(async number => (await memory.log.of({ scope: 'person', id: person(number) }, 'wren')).length),
    )
    const [doubled, missing] = [times.filter(many => many > 1), times.filter(many => many === 0)]
    const called = given().map(({ body }) => body.content)
    const posted = discord.messages.filter(({ body }) => body.content === undefined)
    process.stdout.write(
      `two replicas, killed ${kills} times, clocks ${ahead_s - behind_s} s apart: ${asked.length} changes asked of both, ${doubled.length} doubled, ${missing.length} not done; ${called.length} of ${reminders} reminders given, ${new Set(called).size} different; ${posted.length} cards\n`,
    )
    expect(acknowledged).toBe(asked.length)
    expect([doubled.length, missing.length]).toEqual([0, 0])
    expect([called.length, new Set(called).size]).toEqual([reminders, reminders])
    expect(posted).toHaveLength(cards.length)
    expect(discord.refused).toEqual([])
    await kill(late)
  } finally {
    for (const one of running) await one.program.kill()
    await memory.close()
    await discord.close()
    await server.close()
  }
})
