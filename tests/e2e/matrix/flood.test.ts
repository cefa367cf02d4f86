// One member asks a hundred questions in ten seconds: they get their share and one kind line, and nobody else waits for it.

import { setTimeout as pause } from 'node:timers/promises'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { answersIn, type PlainMember, plainMember } from '../../support/matrix/plain-member.ts'
import { type AssistantProcess, assistantProcess } from '../../support/matrix/process.ts'
import { type Synapse, startSynapse } from '../../support/matrix/synapse.ts'

const flood = 100
type Answer = ReturnType<typeof answersIn>[number]

let synapse: Synapse
let assistant: AssistantProcess
let eve: PlainMember
let ben: PlainMember
let room: string

beforeAll(async () => {
  synapse = await startSynapse()
  assistant = await assistantProcess(synapse, 'chargehand')
  await assistant.start()
  eve = await plainMember(synapse, 'eve')
  ben = await plainMember(synapse, 'ben')
  room = await eve.room({ preset: 'public_chat', name: 'Club field', invite: [assistant.userId] })
  await eve.waitsFor(room, assistant.userId)
  await ben.join(room)
})

afterAll(async () => {
  await assistant?.remove()
  await synapse?.remove()
})

test('a flood is answered within limits, others and dangers among it at once', async () => {
  const ask = (mAh: number) => `!charge current pack: 3S ${mAh} LiHV charger: 0.5/1/2/4A`
  // They wait for the assistant together: what comes first then is no matter of how fast either is.
  assistant.signal('SIGSTOP')
  const asked: string[] = []
  for (let at = 0; at < flood; at += 1) asked.push(await eve.say(room, ask(500 + at)))
  const bens = await ben.say(room, ask(720))
  const fire = await eve.say(room, '!charge my pack is on fire')
  const swollen = await eve.say(room, '!charge my 3S 720 LiHV is swollen')
  assistant.signal('SIGCONT')
  const answers = async () => answersIn(await ben.everything(room), assistant.userId)
  const isLine = ([, { content }]: Answer) => content.body?.includes('That is a lot at once') === true
  for (let tries = 0; tries < 60 && !(await answers()).some(isLine); tries += 1) await pause(1000)
  await pause(3000)
  const given = await answers()
  const place = (id: string) => given.findIndex(([question]) => question === id)
  const lines = given.filter(isLine)
  const ofEve = given.filter(([question]) => asked.includes(question))
  process.stdout.write(
    `a flood of ${flood}: ${ofEve.length} answered, ${lines.length} told so; another member after ${place(bens)} answers, a fire after ${place(fire)}, a swollen pack after ${place(swollen)}\n`,
  )
  expect(place(fire)).toBeGreaterThanOrEqual(0)
  expect(place(fire)).toBeLessThanOrEqual(1)
  expect(place(swollen)).toBeGreaterThanOrEqual(0)
  expect(place(swollen)).toBeLessThanOrEqual(2)
  expect(place(bens)).toBeGreaterThanOrEqual(0)
  expect(place(bens)).toBeLessThanOrEqual(6)
  expect(lines).toHaveLength(1)
  expect(ofEve.length).toBeLessThan(flood / 2)
  expect(new Set(given.map(([question]) => question)).size).toBe(given.length)
})
