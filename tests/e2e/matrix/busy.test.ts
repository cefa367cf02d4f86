// Ten busy rooms, while the assistant is killed, stopped and stalled: every question is answered once, in its room's order.

import { setTimeout as pause } from 'node:timers/promises'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { answersIn, type PlainMember, plainMember } from '../../support/matrix/plain-member.ts'
import { type AssistantProcess, assistantProcess } from '../../support/matrix/process.ts'
import { type Synapse, startSynapse } from '../../support/matrix/synapse.ts'

/** Besides the questions. */
const talk = Number(process.env.BUSY_MESSAGES ?? 5000)
const roomCount = 10
const rounds = 7
const questionsARound = 3
const patience_ms = 180_000

let synapse: Synapse
let assistant: AssistantProcess
let askers: readonly PlainMember[]
let rooms: readonly string[]

beforeAll(async () => {
  synapse = await startSynapse()
  assistant = await assistantProcess(synapse, 'chargehand')
  await assistant.start()
  const names = Array.from({ length: roomCount }, (_, at) => `asker${at}`)
  askers = await Promise.all(names.map(name => plainMember(synapse, name)))
  rooms = await Promise.all(
    askers.map((asker, at) => asker.room({ preset: 'public_chat', name: `Club ${at}`, invite: [assistant.userId] })),
  )
  for (const [at, room] of rooms.entries()) await askers[at]?.waitsFor(room, assistant.userId)
})

afterAll(async () => {
  await assistant?.remove()
  await synapse?.remove()
})

/** Says so much in every room, with the questions spread among it; gives the questions' ids by room. */
async function busy(chatter: PlainMember, each: number): Promise<string[][]> {
  const every = Math.floor(each / questionsARound)
  return Promise.all(
    rooms.map(async (room, at) => {
      const asked: string[] = []
      for (let said = 0; said < each; said += 1) {
        await chatter.say(room, `wind is ${said} today`)
        if (said % every !== 0 || asked.length === questionsARound) continue
        asked.push(
          (await askers[at]?.say(room, `!charge current pack: 3S ${700 + said} LiHV charger: 0.5/1/2/4A`)) ?? '',
        )
      }
      return asked
    }),
  )
}

/** What befalls the assistant in a round. */
const fates: readonly ((talking: () => Promise<string[][]>) => Promise<string[][]>)[] = [
  talking => talking(),
  async talking => {
    await assistant.kill()
    const asked = await talking()
    await assistant.start()
    return asked
  },
  async talking => {
    assistant.signal('SIGSTOP')
    const asked = await talking()
    assistant.signal('SIGCONT')
    return asked
  },
  async talking => {
    const asked = talking()
    for (let times = 0; times < 3; times += 1) {
      await pause(Math.random() * 2000)
      await assistant.kill()
      await assistant.start()
    }
    return asked
  },
  async talking => {
    await assistant.stop()
    const asked = await talking()
    await assistant.start()
    return asked
  },
]

test('every question in ten busy rooms is answered once, in order', { timeout: 1_800_000 }, async () => {
  const chatter = await plainMember(synapse, 'chatter')
  for (const room of rooms) await chatter.join(room)
  const asked: string[][] = rooms.map(() => [])
  const ask = async (words: string) => {
    const ids = await Promise.all(rooms.map((room, at) => askers[at]?.say(room, `!charge ${words}`) ?? ''))
    for (const [at, id] of ids.entries()) asked[at]?.push(id)
  }
  const answered = async () => {
    const all = await Promise.all(rooms.map((room, at) => askers[at]?.everything(room) ?? []))
    return all.map(events => answersIn(events, assistant.userId).map(([question]) => question))
  }
  for (let round = 0; round < rounds; round += 1) {
    const fate = fates[round % fates.length] as (typeof fates)[number]
    const now = await fate(() => busy(chatter, Math.round(talk / roomCount / rounds)))
    for (const [at, ids] of now.entries()) asked[at]?.push(...ids)
  }
  // Asked last in each room and answered: by then what was lost stays lost, and a second answer would be there.
  await ask('hello')
  const deadline = Date.now() + patience_ms
  let found = await answered()
  while (found.some((ids, at) => !ids.includes(asked[at]?.at(-1) ?? '')) && Date.now() < deadline) {
    await pause(1000)
    found = await answered()
  }
  const whole = asked.flat()
  const times = (id: string) => found.flat().filter(one => one === id).length
  process.stdout.write(
    `${whole.length} questions among ${talk} messages: ${whole.filter(id => times(id) === 1).length} answered once, ` +
      `${whole.filter(id => times(id) === 0).length} never, ${whole.filter(id => times(id) > 1).length} more than once\n`,
  )
  expect(found).toEqual(asked)
})
