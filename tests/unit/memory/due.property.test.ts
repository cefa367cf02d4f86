// Work that is due, beside a model of it in a map: whatever is done in whichever order, both tell the same.

import fc from 'fast-check'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Due, NewDue } from '../../../src/memory/due.ts'
import type { Memory } from '../../../src/memory/memory.ts'
import { cases } from '../../support/cases.ts'
import { openTestMemory } from '../../support/test-memory.ts'

let memory: Memory
beforeAll(async () => {
  memory = await openTestMemory()
})
afterAll(() => memory.close())

const start_ms = Date.parse('2031-05-04T10:00:00Z')
const lease_s = 120
const id = fc.integer({ min: 0, max: 4 })
const seconds = fc.integer({ min: 0, max: 300 })
const deed = fc.oneof(
  fc.record({ what: fc.constant('add' as const), id, seconds }),
  fc.record({ what: fc.constant('put' as const), id, seconds }),
  fc.record({ what: fc.constant('claim' as const) }),
  fc.record({ what: fc.constant('later' as const), id, seconds }),
  fc.record({ what: fc.constant('done' as const), id }),
  fc.record({ what: fc.constant('wait' as const), seconds }),
)

interface Modelled {
  dueAt: number
  tries: number
  isDone: boolean
}

let run = 0
test('the table does what its model does', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(deed, { maxLength: 25 }), async deeds => {
      run += 1
      const kind = `chore ${run}`
      const model = new Map<string, Modelled>()
      const taken = new Map<string, Due>()
      let now = start_ms
      const work = (number: number, after_s: number): NewDue => ({
        id: `${kind}.${number}`,
        kind,
        person: 'room:wim',
        place: 'room:shed',
        body: { number },
        dueAt: new Date(now + after_s * 1000),
      })
      for (const one of deeds) {
        if (one.what === 'wait') now += one.seconds * 1000
        else if (one.what === 'claim') {
          const due = [...model].filter(([, { dueAt, isDone }]) => !isDone && dueAt <= now)
          for (const [, modelled] of due)
            Object.assign(modelled, { dueAt: now + lease_s * 1000, tries: modelled.tries + 1 })
          const claimed = await memory.due.claim(kind, new Date(now), lease_s)
          expect(claimed.map(({ id }) => id).toSorted()).toEqual(due.map(([id]) => id).toSorted())
          for (const it of claimed) taken.set(it.id, it)
        } else {
          const key = `${kind}.${one.id}`
          const modelled = model.get(key)
          if (one.what === 'add') {
            const added = work(one.id, one.seconds)
            expect(await memory.due.add(added)).toBe(modelled ? 0 : 1)
            if (!modelled) model.set(key, { dueAt: added.dueAt.getTime(), tries: 0, isDone: false })
          } else if (one.what === 'put') {
            const anew = work(one.id, one.seconds)
            await memory.due.put(anew)
            model.set(key, { dueAt: anew.dueAt.getTime(), tries: modelled?.tries ?? 0, isDone: false })
          } else if (one.what === 'done') {
            await memory.due.done(key, new Date(now))
            if (modelled) modelled.isDone = true
          } else {
            const it = taken.get(key)
            if (!it) continue
            await memory.due.later(it, new Date(now + one.seconds * 1000))
            const isSame = modelled?.dueAt === it.dueAt.getTime() && modelled.tries === it.tries
            if (modelled && isSame) modelled.dueAt = now + one.seconds * 1000
          }
        }
      }
      for (const [key, { dueAt, tries, isDone }] of model) {
        const found = await memory.due.find(key)
        expect(found).toMatchObject({ isDone, tries, dueAt: new Date(dueAt) })
        expect(found?.body).toEqual(isDone ? undefined : { number: Number(key.at(-1)) })
      }
    }),
    cases(100),
  )
})
