// A crash says what happened and gives no token away.

import { spawnSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'

const secret = 'aW50ZXJhY3Rpb24-secret-token'
const crash = (guard: string, how: string) =>
  spawnSync(process.execPath, ['tests/support/crash.ts', guard, how, secret], { encoding: 'utf8' })

describe('a fault that nobody caught', () => {
  it.each(['thrown', 'rejected'])('is logged without its tokens when %s', how => {
    const { status, stdout, stderr } = crash('guarded', how)
    expect(status).toBe(1)
    expect(stderr).toContain('a fault that nobody caught')
    expect(stderr).toContain('interactions/123456/(hidden)/callback failed')
    expect(stdout + stderr).not.toContain(secret)
  })

  it('would give them away if left to Node: this test can fail', () => {
    expect(crash('unguarded', 'thrown').stderr).toContain(secret)
  })
})
