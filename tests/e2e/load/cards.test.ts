// Ten thousand cards brought up to date while people ask: every one is, in order, and nobody waits for them. LOAD says how
// many of them.

import { expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { createNoticeboards, type Noticeboard } from '../../../src/assistant/cards/noticeboard.ts'
import { createAssistant } from '../../../src/assistant/running/assistant.ts'
import { member } from '../../support/ask.ts'
import { openTestMemory } from '../../support/test-memory.ts'

const ofClub = 100
const clubs = Math.ceil(100 * Number(process.env.LOAD ?? 1))
/** For all but one of a hundred who ask meanwhile; alone they wait some 10 ms. */
const longest_ms = 500

test('ten thousand cards', { timeout: 600_000 }, async () => {
  const memory = await openTestMemory()
  for (let club = 0; club < clubs; club += 1)
    for (let at = 0; at < ofClub; at += 1) {
      const place = `room:bench-${club}`
      const content = `current pack: ${2 + (at % 5)}S ${300 + at * 10} LiPo charger: 0.5/1/2A`
      const saying = { title: `pack ${String(at).padStart(2, '0')}`, kind: 'question', content } as const
      const answer = await memory.answers.add(
        { community: `room:club-${club}`, canonical: '', place, ...saying },
        ofClub,
      )
      if (typeof answer === 'string') throw new Error(answer)
      const card = { message: `room:${club}-${at}`, pinned: true, digest: 'earlier' }
      await memory.answers.settle(answer, { place, canonical: '', card })
    }

  const edited = new Map<string, string[]>()
  const board: Noticeboard = {
    ready: () => true,
    edit: async ({ place, message }) => {
      edited.set(place, [...(edited.get(place) ?? []), message])
      return 'edited'
    },
    post: () => Promise.reject(new Error('nothing is posted')),
    pin: () => Promise.reject(new Error('nothing is pinned')),
    remove: () => Promise.reject(new Error('nothing is removed')),
    direct: () => Promise.reject(new Error('nobody is called')),
    strike: () => Promise.reject(new Error('nothing is struck')),
  }
  const noticeboard = createNoticeboards()
  noticeboard.add('room', board)
  const faults: unknown[] = []
  const assistant = createAssistant({ commands, memory, noticeboard, onFault: fault => faults.push(fault) })
  const ask = () => assistant.answer('how long for a 3S 720 LiHV at 0.5A?', member)
  await ask()
  await assistant.begin()

  const waited_ms: number[] = []
  const start = performance.now()
  let isDone = false
  const refreshing = assistant.strike('cards').then(() => {
    isDone = true
  })
  while (!isDone) {
    const asked = performance.now()
    await ask()
    waited_ms.push(performance.now() - asked)
    await new Promise(resolve => setTimeout(resolve, 50))
  }
  await refreshing
  const took_s = (performance.now() - start) / 1000
  const [half, most] = [0.5, 0.99].map(
    share => waited_ms.toSorted((a, b) => a - b)[Math.floor(waited_ms.length * share)],
  )
  process.stdout.write(
    `${clubs * ofClub} cards in ${took_s.toFixed(0)} s; who asked meanwhile waited ${half?.toFixed(0)} ms, one of a hundred ${most?.toFixed(0)} ms\n`,
  )
  for (const [place, messages] of edited) {
    const club = place.replace('room:bench-', '')
    expect(messages).toEqual(Array.from({ length: ofClub }, (_, at) => `room:${club}-${at}`))
  }
  expect([edited.size, faults]).toEqual([clubs, []])
  expect(most).toBeLessThan(longest_ms)
  await memory.close()
})
