// What a host asks a running assistant: alive, ready, and its numbers.

import type { Surface } from '../assistant/running/assistant.ts'
import type { Metrics } from './metrics.ts'
import type { Route } from './server.ts'

export function healthRoutes(surfaces: readonly Surface[], metrics: Metrics): Route[] {
  return [
    { method: 'GET', path: '/health', answer: () => ({ status: 200, body: 'alive\n' }) },
    {
      method: 'GET',
      path: '/ready',
      answer: () => {
        const waiting = surfaces.filter(surface => !surface.ready()).map(({ name }) => name)
        return waiting.length === 0
          ? { status: 200, body: 'ready\n' }
          : { status: 503, body: `not ready: ${waiting.join(', ')}\n` }
      },
    },
    {
      method: 'GET',
      path: '/metrics',
      answer: async () => ({ status: 200, body: await metrics.text(), contentType: metrics.contentType }),
    },
  ]
}
