// The program asked by HTTP by thousands at once: everybody gets the answer to their own question, the same as whoever asks
// alone, and what is not signed, old or sent twice is turned away meanwhile. LOAD says how much of it.

import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { asksCurrent, differentQuestions, type Endpoint, startOurs, valuesOf } from '../../support/load/endpoints.ts'
import { type Answered, pump } from '../../support/load/requests.ts'

const questions = Math.ceil(differentQuestions * Number(process.env.LOAD ?? 1))
const [atOnce, signedAtOnce] = [32, 400]

let folder: string
let endpoint: Endpoint
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'chargehand-load-'))
  endpoint = await startOurs({ CHARGEHAND_DATA: folder })
})
afterAll(async () => {
  await endpoint.program.kill()
  await rm(folder, { recursive: true })
})

let member = 0
const numbers = Array.from({ length: questions }, (_, at) => at)
const asked = (some: readonly number[]) => some.map(number => asksCurrent(number, member++))
const statuses = (answers: readonly Answered[]) => [...new Set(answers.map(({ status }) => status))]

/** What each is answered, in order. They are signed a few at a time, and asked again where a busy machine only promised. */
async function answersTo(some: readonly number[], by = atOnce): Promise<readonly string[]> {
  const bodies: string[] = []
  let open = [...some.keys()]
  while (open.length > 0) {
    const now = open.slice(0, signedAtOnce)
    const sent = asked(now.map(at => some[at] ?? 0))
    const answers = await pump(endpoint.port, sent, by)
    expect(statuses(answers).filter(status => status !== 200 && status !== 202)).toEqual([])
    const whole = answers.filter(({ status }) => status === 200)
    for (const { at, body } of whole) bodies[now[at] ?? 0] = body
    const done = new Set(whole.map(({ at }) => now[at]))
    open = open.filter(at => !done.has(at))
  }
  return bodies
}

test('everybody gets their own answer, and those who ask again the same', { timeout: 900_000 }, async () => {
  const bodies = await answersTo(numbers)
  const strays = bodies.filter((body, number) => {
    const [cells, capacity, type] = valuesOf(number).pack.split(' ')
    return !body.includes(`${cells} ${capacity}mAh ${type}`)
  })
  expect(strays.slice(0, 3)).toEqual([])
  const again = await answersTo(numbers)
  expect(again.filter((body, number) => body !== bodies[number]).slice(0, 3)).toEqual([])
  expect(await answersTo(numbers.slice(0, 20), 1)).toEqual(bodies.slice(0, 20))
  expect(bodies.filter(body => !body.includes('custom_id')).slice(0, 3)).toEqual([])
  process.stdout.write(`${bodies.length + again.length} questions by HTTP, ${atOnce} at once: each its own answer\n`)
})

test('what bears no recent signature of Discord is turned away, and the same interaction twice', async () => {
  const [good = Buffer.alloc(0), other = Buffer.alloc(0)] = asked([0, 1])
  const changed = (from: RegExp, to: string) => Buffer.from(good.toString().replace(from, to))
  const old = changed(/timestamp: \d+/, `timestamp: ${Math.floor(Date.now() / 1000) - 120}`)
  const forged = changed(/3S |2S |1S /, '6S ')
  const unsigned = changed(/x-signature-ed25519: \w+\r\n/, '')
  const bad = [old, forged, unsigned]
  const many = Array.from({ length: 300 }, (_, at) => bad[at % bad.length] ?? good)
  expect(statuses(await pump(endpoint.port, many, atOnce))).toEqual([401])
  const twice = await pump(endpoint.port, [other, other], 1)
  expect(twice.map(({ status }) => status).at(-1)).toBe(409)
})
