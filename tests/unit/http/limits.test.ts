// What the HTTP server takes of a client: not too much, and not for too long.

import { expect, it } from 'vitest'
import { withEchoServer } from '../../support/echo-server.ts'

const { port, logged } = withEchoServer()

const post = (body: string, headers = {}) => fetch(`http://127.0.0.1:${port()}/echo`, { method: 'POST', body, headers })

it('takes what is short enough', async () => {
  expect((await post('hello')).status).toBe(200)
})

it('refuses a body that is too long', async () => {
  const outcome = await post('x'.repeat(300_000)).then(
    ({ status }) => status,
    () => 'cut off',
  )
  expect([413, 'cut off']).toContain(outcome)
})

it('refuses headers that are too long', async () => {
  expect((await post('hello', { 'x-long': 'x'.repeat(10_000) })).status).toBe(431)
})

it('logs none of that as a fault of ours', () => {
  expect(logged()).toBe('')
})
