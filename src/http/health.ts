// What a host asks a running assistant: alive, ready, and its numbers.

import { createHash, timingSafeEqual } from 'node:crypto'
import { lookedUp } from '../assistant/lookup.ts'
import type { Surface } from '../assistant/running/assistant.ts'
import type { Memory } from '../memory/memory.ts'
import type { Metrics } from './metrics.ts'
import type { Route } from './server.ts'

/** With a token, only who bears it is told more than that the program is alive. */
export function healthRoutes(
  surfaces: readonly Surface[],
  memory: Pick<Memory, 'house'>,
  metrics: Metrics,
  token?: string,
): Route[] {
  const guarded = (route: Route): Route => ({
    ...route,
    answer: request =>
      token === undefined || same(request.headers.authorization ?? '', `Bearer ${token}`)
        ? route.answer(request)
        : { status: 401, body: 'needs the token\n' },
  })
  return [
    { method: 'GET', path: '/health', answer: () => ({ status: 200, body: 'alive\n' }) },
    guarded({
      method: 'GET',
      path: '/ready',
      answer: async () => {
        const waiting: string[] = surfaces.filter(surface => !surface.ready()).map(({ name }) => name)
        if (!(await lookedUp(memory.house.rules('')))) waiting.push('memory')
        return waiting.length === 0
          ? { status: 200, body: 'ready\n' }
          : { status: 503, body: `not ready: ${waiting.join(', ')}\n` }
      },
    }),
    guarded({
      method: 'GET',
      path: '/metrics',
      answer: async () => ({ status: 200, body: await metrics.text(), contentType: metrics.contentType }),
    }),
  ]
}

/** In a time that does not tell how much of it was right. */
const same = (one: string, other: string): boolean => timingSafeEqual(digestOf(one), digestOf(other))
const digestOf = (text: string): Buffer => createHash('sha256').update(text).digest()
