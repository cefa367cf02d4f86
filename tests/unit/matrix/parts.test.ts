// The small parts: invites, waiting and trying again, lanes, settings.

import { ConnectionError, HTTPError, MatrixError } from 'matrix-js-sdk'
import { describe, expect, it } from 'vitest'
import { createLanes } from '../../../src/ground/lanes.ts'
import { createPersistence } from '../../../src/ground/persistence.ts'
import { pauseAfter } from '../../../src/matrix/client/persistence.ts'
import { matrixSettings } from '../../../src/matrix/client/settings.ts'
import { transactionId } from '../../../src/matrix/messages/send.ts'
import { mayInvite } from '../../../src/matrix/rooms/rooms.ts'
import { readConfig } from '../../../src/program/config.ts'

describe('mayInvite', () => {
  it.each([
    [['anyone'], true],
    [['club.test'], true],
    [['@ada:club.test'], true],
    [['other.org', '@ben:club.test'], false],
    [['test'], false],
    [['club'], false],
    [[], false],
  ])('%j lets @ada:club.test invite: %s', (rule, may) => {
    expect(mayInvite('@ada:club.test', rule)).toBe(may)
  })

  it('takes the port as part of the server name', () => {
    expect(mayInvite('@ada:club.test:8448', ['club.test:8448'])).toBe(true)
    expect(mayInvite('@ada:club.test:8448', ['club.test'])).toBe(false)
  })
})

const limited = (retry_after_ms?: number) =>
  new MatrixError({ errcode: 'M_LIMIT_EXCEEDED', ...(retry_after_ms === undefined ? {} : { retry_after_ms }) }, 429)

describe('pauseAfter', () => {
  it('waits as long as the server asks', () => {
    expect(pauseAfter(limited(2_500), 1)).toBe(2_500)
  })

  it('doubles where the server does not say, is away or fails, up to half a minute', () => {
    for (const error of [limited(), new ConnectionError('away'), new HTTPError('bad gateway', 502)]) {
      expect([1, 2, 3, 20].map(attempt => pauseAfter(error, attempt))).toEqual([1_000, 2_000, 4_000, 30_000])
    }
  })

  it('gives up on what no waiting mends', () => {
    const forbidden = new MatrixError({ errcode: 'M_FORBIDDEN' }, 403)
    expect(
      [forbidden, new MatrixError({ errcode: 'M_TOO_LARGE' }, 413), new Error('ours')].map(e => pauseAfter(e, 1)),
    ).toEqual([undefined, undefined, undefined])
  })
})

describe('persistence', () => {
  it('tries again until it succeeds', async () => {
    const attempts: number[] = []
    const result = await createPersistence({ pauseAfter }).run(async attempt => {
      attempts.push(attempt)
      if (attempt < 3) throw limited(1)
      return 'done'
    })
    expect([result, attempts]).toEqual(['done', [1, 2, 3]])
  })

  it('stops waiting when closed, and says why it had to wait', async () => {
    const persistence = createPersistence({ pauseAfter })
    const error = limited(3_600_0)
    const run = persistence.run(() => Promise.reject(error))
    persistence.close()
    await expect(run).rejects.toBe(error)
  })
})

describe('lanes', () => {
  it('keep the order within one and do not wait for each other, and a fault stops neither', async () => {
    const faults: unknown[] = []
    const done: string[] = []
    const lanes = createLanes(fault => faults.push(fault))
    let release = () => {}
    const gate = new Promise<void>(resolve => {
      release = resolve
    })
    lanes.add('a', async () => {
      await gate
      done.push('a1')
      throw new Error('a1 failed')
    })
    lanes.add('a', async () => void done.push('a2'))
    lanes.add('b', async () => {
      done.push('b1')
      release()
    })
    await lanes.settled()
    expect(done).toEqual(['b1', 'a1', 'a2'])
    expect(faults).toEqual([new Error('a1 failed')])
  })
})

describe('transactionId', () => {
  it('is the same for the same event, another for another, and fit for a path', () => {
    expect(transactionId('$a')).toBe(transactionId('$a'))
    expect(transactionId('$a')).not.toBe(transactionId('$b'))
    expect(transactionId('$a')).toMatch(/^[\w-]{20,40}$/)
  })
})

describe('matrixSettings', () => {
  const enough = {
    MATRIX_HOMESERVER: 'https://club.test',
    MATRIX_ACCESS_TOKEN: 'a token',
    MATRIX_STORE_KEY: 'a long enough passphrase',
  }
  const settings = (environment: Record<string, string>) => matrixSettings(readConfig(environment))

  it('is absent where Matrix is not configured', () => {
    expect(settings({})).toBeUndefined()
  })

  it('takes a token, or name and password', () => {
    expect(settings(enough)?.login).toEqual({ accessToken: 'a token' })
    const { MATRIX_ACCESS_TOKEN: _, ...rest } = enough
    expect(settings({ ...rest, MATRIX_USER: '@c:club.test', MATRIX_PASSWORD: 'p' })?.login).toEqual({
      user: '@c:club.test',
      password: 'p',
    })
  })

  it('takes a recovery key that was typed right', () => {
    const recoveryKey = 'EsTC 3ccY E4EN YfcV CZeu ap3F HRKM u5p3 n5om 12BW XPKh Ygms'
    expect(settings({ ...enough, MATRIX_RECOVERY_KEY: recoveryKey })?.recoveryKey).toBe(recoveryKey)
    const wrong = recoveryKey.replace('YfcV', 'YfcW')
    expect(() => settings({ ...enough, MATRIX_RECOVERY_KEY: wrong })).toThrow('MATRIX_RECOVERY_KEY')
  })

  it.each(['MATRIX_ACCESS_TOKEN', 'MATRIX_STORE_KEY'] as const)('names %s where it is missing', missing => {
    const { [missing]: _, ...rest } = enough
    expect(() => settings(rest)).toThrow(missing)
  })
})
