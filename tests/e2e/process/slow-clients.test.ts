// The HTTP server waits ten seconds for a client, and no longer.

import { once } from 'node:events'
import { connect } from 'node:net'
import { expect, it } from 'vitest'
import { withEchoServer } from '../../support/echo-server.ts'

const { port, logged } = withEchoServer()

it.each([
  ['says nothing', '', undefined],
  ['stops in the middle of a header', 'GET /echo HTTP/1.1\r\nhost: he', undefined],
  ['sends its body letter by letter', 'POST /echo HTTP/1.1\r\nhost: here\r\ncontent-length: 1000\r\n\r\n', 'x'],
] as const)('shows a client the door that %s', { concurrent: true, timeout: 30_000 }, async (_, start, letter) => {
  const socket = connect(port(), '127.0.0.1').resume()
  socket.on('error', () => {})
  socket.write(start)
  const timer = setInterval(() => letter && socket.write(letter), 200)
  const since = performance.now()
  await once(socket, 'close')
  clearInterval(timer)
  expect(performance.now() - since).toBeLessThan(15_000)
})

it('logs none of that as a fault of ours', () => {
  expect(logged()).toBe('')
})
