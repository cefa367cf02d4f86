// The requests of a Matrix homeserver, answered by nock: knows what the surface needs, and refuses the rest.

import nock from 'nock'
import type { MatrixSettings } from '../../../src/matrix/client/settings.ts'
import { self } from './events.ts'

export interface Sent {
  readonly method: string
  readonly path: string
  readonly body: Record<string, unknown>
  readonly authorization: string | null
}

export interface Homeserver {
  /** How to get in. */
  readonly settings: MatrixSettings
  /** What was asked of it so far, syncs left out. */
  readonly requests: readonly Sent[]
  /** Requests that it knows nothing of. */
  readonly unknown: readonly string[]
  /** The answer to every first sync. */
  first(answer: object): void
  /** The next answer to a later sync. */
  sync(answer: object): void
  /** Answers the next request whose method and path match with a status and body of its own, as often as it is told. */
  once(method: string, path: RegExp, status: number, body: object, times?: number): void
  /** Never answers the next such request. */
  hush(method: string, path: RegExp): void
  close(): void
}

type Answer = readonly [status: number, body: object]

const known: readonly (readonly [method: string, path: RegExp, body: object])[] = [
  ['GET', /^\/versions$/, { versions: ['v1.11'] }],
  ['POST', /^\/v3\/login$/, { user_id: '@chargehand:club.test', device_id: 'BENCH', access_token: 'secret-token' }],
  ['GET', /^\/v3\/account\/whoami$/, { user_id: '@chargehand:club.test', device_id: 'BENCH' }],
  ['GET', /^\/v3\/pushrules\/$/, { global: {} }],
  ['GET', /^\/v3\/capabilities$/, { capabilities: {} }],
  ['GET', /^\/v3\/voip\/turnServer$/, {}],
  ['POST', /^\/v3\/user\/[^/]+\/filter$/, { filter_id: '1' }],
  ['POST', /^\/v3\/keys\/upload$/, { one_time_key_counts: { signed_curve25519: 50 } }],
  ['POST', /^\/v3\/keys\/query$/, { device_keys: { '@chargehand:club.test': {} }, failures: {} }],
  ['POST', /^\/v3\/keys\/device_signing\/upload$/, {}],
  ['POST', /^\/v3\/keys\/signatures\/upload$/, { failures: {} }],
  ['PUT', /^\/v3\/rooms\/[^/]+\/send\/m\.room\.message\/[\w-]+$/, { event_id: '$answer' }],
  ['PUT', /^\/v3\/rooms\/[^/]+\/send\/m\.reaction\/[\w-]+$/, { event_id: '$sign' }],
  ['POST', /^\/v3\/rooms\/[^/]+\/leave$/, {}],
  ['POST', /^\/v3\/rooms\/[^/]+\/read_markers$/, {}],
]

/** Else a device makes new keys at every sync: https://spec.matrix.org/v1.15/client-server-api/#one-time-and-fallback-keys */
const enoughKeys = { device_one_time_keys_count: { signed_curve25519: 50 } }

/** Where the server has nothing of ours yet. */
const notFound = [/rtc\/transports$/, /^\/v3\/room_keys\/version$/, /^\/v3\/user\/[^/]+\/account_data\/[\w.]+$/]

export function homeserverOnNock(): Homeserver {
  const url = 'https://club.test'
  const requests: Sent[] = []
  const unknown: string[] = []
  const special: { method: string; path: RegExp; answer: Promise<Answer> }[] = []
  const { promise: never, resolve: giveUp } = Promise.withResolvers<Answer>()
  const batches: object[] = []
  const waiting: (() => void)[] = []
  let first: object = {}
  let open = true

  /** Set aside for it. */
  function specialFor(method: string, path: string): Promise<Answer> | undefined {
    const at = special.findIndex(one => method === one.method && one.path.test(path))
    return at < 0 ? undefined : special.splice(at, 1)[0]?.answer
  }

  async function answer(request: Request): Promise<Answer> {
    const path = decodeURIComponent(new URL(request.url).pathname).replace('/_matrix/client', '')
    if (path === '/v3/sync') {
      const set = specialFor(request.method, path)
      if (set) return set
      const since = new URL(request.url).searchParams.get('since')
      if (since !== null) return [200, await after(since)]
      return [200, { next_batch: `batch-${batches.length}`, ...enoughKeys, ...first }]
    }
    const text = await request.text()
    const body = text ? JSON.parse(text) : {}
    requests.push({ method: request.method, path, body, authorization: request.headers.get('authorization') })
    const found = specialFor(request.method, path)
    if (found) return found
    const usual = known.find(([method, wanted]) => method === request.method && wanted.test(path))
    if (usual) return [200, usual[2]]
    if (!notFound.some(wanted => wanted.test(path))) unknown.push(`${request.method} ${path}`)
    return [404, { errcode: 'M_NOT_FOUND', error: 'not here' }]
  }

  /** What came after that batch, the same however often it is asked for. */
  async function after(since: string): Promise<object> {
    const at = Number(since.replace('batch-', ''))
    while (batches.length <= at && open) await new Promise<void>(resolve => waiting.push(resolve))
    const there = batches[at]
    return { next_batch: there ? `batch-${at + 1}` : since, ...enoughKeys, ...there }
  }

  function wake(): void {
    for (const one of waiting.splice(0)) one()
  }

  if (!nock.isActive()) nock.activate()
  for (const method of ['get', 'post', 'put'] as const) {
    nock(url)
      .persist()
      [method](/.*/)
      .reply(async (request: Request) => [...(await answer(request))] as [number, object])
  }
  return {
    settings: {
      homeserver: url,
      login: { user: self, password: 'a password' },
      storeKey: 'a passphrase for tests only',
      recoveryKey: undefined,
      verifiers: [],
      deviceName: 'Chargehand',
      prefix: '!charge',
      invites: ['club.test'],
      rooms: [],
      bots: ['@feed:club.test'],
    },
    requests,
    unknown,
    first: answer => {
      first = answer
    },
    sync(next) {
      batches.push(next)
      wake()
    },
    once: (method, path, status, body, times = 1) =>
      void special.push(...Array(times).fill({ method, path, answer: Promise.resolve([status, body]) })),
    hush: (method, path) => void special.push({ method, path, answer: never }),
    close() {
      open = false
      wake()
      giveUp([503, {}])
      nock.cleanAll()
      // Files share a process: on its way through nock a request that trickles never leaves it.
      nock.restore()
    },
  }
}
