// The HTTP server waits ten seconds for a client, and no longer.

import { once } from 'node:events'
import { connect } from 'node:net'
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

it.each([
  ['says nothing', '', undefined],
  ['stops in the middle of a header', 'GET /echo HTTP/1.1\r\nhost: he', undefined],
  ['sends its body letter by letter', 'POST /echo HTTP/1.1\r\nhost: here\r\ncontent-length: 1000\r\n\r\n', 'x'],
] as const)('shows a client the door that %s', { concurrent: true, timeout: 30_000 }, async (_, start, letter) => {
  const socket = connect(port, '127.0.0.1').resume()
  socket.on('error', () => {})
  socket.write(start)
  const timer = setInterval(() => letter && socket.write(letter), 200)
  const since = performance.now()
  await once(socket, 'close')
  clearInterval(timer)
  expect(performance.now() - since).toBeLessThan(15_000)
})

it('logs none of that as a fault of ours', () => {
  expect(text()).toBe('')
})
