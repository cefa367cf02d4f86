// What the HTTP server takes of a client: not too much, and not for too long.

import { afterAll, beforeAll, expect, it } from 'vitest'
import { createHttpServer, type HttpServer } from '../../../src/http/server.ts'
import { keptLog } from '../../support/discord-room.ts'

let server: HttpServer
let port: number
const { log, text } = keptLog()
beforeAll(async () => {
  const route = { method: 'POST' as const, path: '/echo', answer: () => ({ status: 200, body: 'heard' }) }
  server = createHttpServer({ host: '127.0.0.1', port: 0 }, [route], log)
  port = await server.start()
})
afterAll(() => server.stop())

const post = (body: string, headers = {}) => fetch(`http://127.0.0.1:${port}/echo`, { method: 'POST', body, headers })

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
  expect(text()).toBe('')
})
