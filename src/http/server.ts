// A small HTTP server for a handful of fixed routes.

import {
  createServer,
  type IncomingHttpHeaders,
  type IncomingMessage,
  type ServerOptions,
  type ServerResponse,
} from 'node:http'
import type { AddressInfo } from 'node:net'
import { ConfigError } from '../program/config.ts'
import { describeError, type Log } from '../program/log.ts'

export interface HttpRequest {
  readonly headers: IncomingHttpHeaders
  readonly body: Buffer
}

export interface HttpAnswer {
  readonly status: number
  readonly body: string
  readonly contentType?: string
}

export interface Route {
  readonly method: 'GET' | 'POST'
  readonly path: string
  answer(request: HttpRequest): Promise<HttpAnswer> | HttpAnswer
}

export interface HttpAddress {
  readonly host: string
  readonly port: number
}

export interface HttpServer {
  /** The port that requests can come to; `port` where that was not 0. Rejects where it cannot be had. */
  start(): Promise<number>
  /** Takes no new connections; resolves when the requests under way are answered, or cut off where they take their time. */
  stop(): Promise<void>
}

/** More than any interaction of ours, far less than would strain the memory. */
const longestBody = 256 * 1024
const slowest_ms = 10_000
/** Reverse proxies keep a few open; more is somebody who wants to fill the memory. */
const mostConnections = 1000
/** For what is being sent when the server stops. */
const farewell_ms = 1000
const limits: ServerOptions = {
  requestTimeout: slowest_ms,
  headersTimeout: slowest_ms,
  maxHeaderSize: 8 * 1024,
  // How often Node looks for requests that are too slow.
  connectionsCheckingInterval: 1000,
}

export function createHttpServer({ host, port }: HttpAddress, routes: readonly Route[], log: Log): HttpServer {
  const server = createServer(limits, (request, response) => {
    answerTo(request, routes)
      .catch((error: unknown) => {
        // A client that goes away in the middle of its request is no fault of ours.
        if (!request.destroyed) log.error({ error: describeError(error) }, 'an HTTP request failed')
        return { status: 500, body: 'fault' }
      })
      .then(answer => send(response, answer))
  })
  server.maxConnections = mostConnections
  server.setTimeout(slowest_ms)
  return {
    start: () =>
      new Promise((resolve, reject) => {
        const refuse = ({ message }: Error) =>
          reject(new ConfigError(`CHARGEHAND_HTTP_HOST and the HTTP ports: ${message}`))
        server.once('error', refuse)
        server.listen(port, host, () => {
          server.off('error', refuse)
          resolve((server.address() as AddressInfo).port)
        })
      }),
    stop: () =>
      new Promise(resolve => {
        server.close(() => resolve())
        server.closeIdleConnections()
        setTimeout(() => server.closeAllConnections(), farewell_ms).unref()
      }),
  }
}

async function answerTo(request: IncomingMessage, routes: readonly Route[]): Promise<HttpAnswer> {
  const path = request.url?.split('?')[0]
  const there = routes.filter(route => route.path === path)
  const route = there.find(({ method }) => method === request.method)
  if (!route) return there.length > 0 ? { status: 405, body: 'wrong method' } : { status: 404, body: 'not found' }
  const body = await readBody(request)
  return body ? route.answer({ headers: request.headers, body }) : { status: 413, body: 'too long' }
}

/** Undefined where it is too long. */
async function readBody(request: IncomingMessage): Promise<Buffer | undefined> {
  const chunks: Buffer[] = []
  let length = 0
  for await (const chunk of request as AsyncIterable<Buffer>) {
    length += chunk.length
    if (length > longestBody) return undefined
    chunks.push(chunk)
  }
  return Buffer.concat(chunks)
}

function send(response: ServerResponse, { status, body, contentType = 'text/plain; charset=utf-8' }: HttpAnswer) {
  response.writeHead(status, { 'content-type': contentType, 'content-length': Buffer.byteLength(body) })
  response.end(body)
}
