// Our HTTP server with one thing to ask for, for the tests of a file.

import { afterAll, beforeAll } from 'vitest'
import { createHttpServer, type HttpServer } from '../../src/http/server.ts'
import { keptLog } from './discord-room.ts'

export function withEchoServer() {
  const { log, text } = keptLog()
  const route = { method: 'POST' as const, path: '/echo', answer: () => ({ status: 200, body: 'heard' }) }
  const server: HttpServer = createHttpServer({ host: '127.0.0.1', port: 0 }, [route], log)
  let port = 0
  beforeAll(async () => {
    port = await server.start()
  })
  afterAll(() => server.stop())
  return { port: () => port, logged: text }
}
