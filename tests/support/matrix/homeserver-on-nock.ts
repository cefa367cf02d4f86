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
  /** Answers the next request whose method and path match with a status and body of its own. */
  once(method: string, path: RegExp, status: number, body: object): void
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
  const special: { method: string; path: RegExp; answer: Answer }[] = []
  const syncs: object[] = []
  let first: object = {}
  let wake = () => {}
  let open = true
  let latest = 0

  async function answer(request: Request): Promise<Answer> {
    const path = decodeURIComponent(new URL(request.url).pathname).replace('/_matrix/client', '')
    if (path === '/v3/sync') {
      const isFirst = !new URL(request.url).searchParams.has('since')
      return [200, isFirst ? { next_batch: 'first', ...enoughKeys, ...first } : await nextSync()]
    }
    const text = await request.text()
    const body = text ? JSON.parse(text) : {}
    requests.push({ method: request.method, path, body, authorization: request.headers.get('authorization') })
    const at = special.findIndex(({ method, path: wanted }) => method === request.method && wanted.test(path))
    const [found] = at < 0 ? [] : special.splice(at, 1)
    if (found) return found.answer
    const usual = known.find(([method, wanted]) => method === request.method && wanted.test(path))
    if (usual) return [200, usual[2]]
    if (!notFound.some(wanted => wanted.test(path))) unknown.push(`${request.method} ${path}`)
    return [404, { errcode: 'M_NOT_FOUND', error: 'not here' }]
  }

  /** A later sync ends an earlier one, whose asker has gone. */
  async function nextSync(): Promise<object> {
    const mine = ++latest
    wake()
    while (syncs.length === 0 && open && mine === latest) {
      await new Promise<void>(resolve => {
        wake = resolve
      })
    }
    const next = mine === latest ? syncs.shift() : undefined
    return { next_batch: `batch-${mine}`, ...enoughKeys, ...next }
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
      deviceName: 'Chargehand',
      prefix: '!charge',
      invites: ['club.test'],
      bots: ['@feed:club.test'],
    },
    requests,
    unknown,
    first: answer => {
      first = answer
    },
    sync(next) {
      syncs.push(next)
      wake()
    },
    once: (method, path, status, body) => void special.push({ method, path, answer: [status, body] }),
    close() {
      open = false
      wake()
      nock.cleanAll()
      // Files share a process: on its way through nock a request that trickles never leaves it.
      nock.restore()
    },
  }
}
