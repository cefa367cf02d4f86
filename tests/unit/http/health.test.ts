// What a host sees of a running assistant: health, readiness and numbers.

import { afterEach, describe, expect, it } from 'vitest'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import { createAssistant, type Surface } from '../../../src/assistant/running/assistant.ts'
import { healthRoutes } from '../../../src/http/health.ts'
import { createMetrics } from '../../../src/http/metrics.ts'
import { createHttpServer, type HttpServer } from '../../../src/http/server.ts'
import type { Memory } from '../../../src/memory/memory.ts'
import { bench, broken, trayList } from '../../support/discord-commands.ts'
import { keptLog } from '../../support/discord-room.ts'
import { openTestMemory } from '../../support/test-memory.ts'

const surface = (name: Surface['name'], ready: boolean): Surface => ({
  name,
  start: async () => {},
  stop: async () => {},
  ready: () => ready,
  deliver: async () => 'delivered',
})
const occasion: Occasion = {
  surface: 'discord',
  asker: { id: 'discord:1', name: 'Ada', moderates: false },
  community: { id: 'discord:2', name: 'club' },
  place: { id: 'discord:3', direct: false },
}

let server: HttpServer | undefined
afterEach(async () => server?.stop())

const refused = () => Promise.reject(Object.assign(new Error(), { code: 'ECONNREFUSED' }))
const here = { house: { rules: async () => ({}) }, due: { waiting: async () => [] } } as unknown as Memory
const away = { house: { rules: refused }, due: { waiting: refused } }

async function served(surfaces: Surface[], memory = here) {
  const metrics = createMetrics({ waiting: () => 2, waited_s: () => 7 }, memory.due)
  server = createHttpServer({ host: '127.0.0.1', port: 0 }, healthRoutes(surfaces, memory, metrics), keptLog().log)
  const port = await server.start()
  return { metrics, get: (path: string) => fetch(`http://127.0.0.1:${port}${path}`) }
}

describe('the health routes', () => {
  it('say alive, and ready only where every surface is', async () => {
    const { get } = await served([surface('discord', true), surface('matrix', false)])
    expect((await get('/health')).status).toBe(200)
    const ready = await get('/ready')
    expect([ready.status, await ready.text()]).toEqual([503, 'not ready: matrix\n'])
    await server?.stop()
    expect((await (await served([surface('discord', true)])).get('/ready')).status).toBe(200)
  })

  it('say which is away where the memory is', async () => {
    const ready = await (await served([surface('discord', true)], away as unknown as Memory)).get('/ready')
    expect([ready.status, await ready.text()]).toEqual([503, 'not ready: memory\n'])
  })

  it('tell what waits, what was tried in vain and how late it is, and whether the memory answers', async () => {
    const memory = await openTestMemory()
    const work = { kind: 'reminder', person: 'discord:1', place: 'discord:3', body: {} }
    const [now, past] = [new Date(), new Date(Date.now() - 100_000)]
    await memory.due.add({ ...work, id: 'one', dueAt: past }, { ...work, id: 'two', dueAt: past })
    for (let count = 0; count < 2; count++) await memory.due.claim('reminder', now, 0)
    await memory.due.done('two', now)
    await memory.due.put({ ...work, id: 'one', dueAt: past })
    await memory.due.add({ ...work, id: 'three', dueAt: new Date(Date.now() + 100_000) })
    const { get } = await served([], memory)
    const text = await (await get('/metrics')).text()
    expect(text).toContain('chargehand_due_waiting{kind="reminder"} 2\n')
    expect(text).toContain('chargehand_due_retried{kind="reminder"} 1\n')
    expect(Number(/due_late_seconds\{kind="reminder"\} (\S+)/.exec(text)?.[1])).toBeGreaterThanOrEqual(100)
    expect(text).toContain('chargehand_memory_up 1\n')
    expect(text).toContain('chargehand_work_waiting 2\n')
    expect(text).toContain('chargehand_work_wait_seconds 7\n')
    await memory.close()
    await server?.stop()
    expect(await (await (await served([], away as unknown as Memory)).get('/metrics')).text()).toContain(
      'memory_up 0\n',
    )
  })

  it('count answers by command, surface and outcome, and never by what a person typed', async () => {
    const { metrics, get } = await served([])
    const memory = await openTestMemory()
    const assistant = metrics.measured(
      createAssistant({ commands: [bench, trayList, broken('secret')], memory, onFault: () => {} }),
    )
    for (const question of ['bench pack: 1S', 'bench pack: 2S', 'tray list', 'bench', 'broken', 'evil{} label="1"'])
      await assistant.answer(question, occasion)
    await memory.close()
    const counted = (await (await get('/metrics')).text())
      .split('\n')
      .filter(line => line.startsWith('chargehand_answers'))
    expect(counted.sort()).toEqual([
      'chargehand_answers_total{command="bench",surface="discord",outcome="go with care"} 2',
      'chargehand_answers_total{command="bench",surface="discord",outcome="problem"} 1',
      'chargehand_answers_total{command="broken",surface="discord",outcome="fault"} 1',
      'chargehand_answers_total{command="none",surface="discord",outcome="not understood"} 1',
      'chargehand_answers_total{command="tray list",surface="discord",outcome="answered"} 1',
    ])
    expect(await metrics.text()).toContain('chargehand_answer_seconds_count{surface="discord"} 6')
  })
})
