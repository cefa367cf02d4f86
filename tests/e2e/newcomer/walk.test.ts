// Somebody new follows DEVELOPERS.md to the letter, in a copy of what is here, and ends with a command of their own.

import { execFileSync, spawnSync } from 'node:child_process'
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { shows, walkIn } from '../../support/newcomer/walk.ts'

const home = mkdtempSync(join(tmpdir(), 'chargehand-newcomer-'))
const clone = join(home, 'chargehand')
const steps = walkIn(readFileSync('DEVELOPERS.md', 'utf8'), 'Your first command, in half an hour')
const longest_ms = 60 * 60 * 1000

afterAll(() => rmSync(home, { recursive: true, force: true }))

/** What is committed and what is not: the walk of this very tree. */
function copyTree(): void {
  const files = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {
    encoding: 'utf8',
  })
  for (const file of files.split('\0').filter(existsSync)) cpSync(file, join(clone, file))
  execFileSync('git', ['init', '--quiet'], { cwd: clone })
}

/** As in a shell of their own: nothing of this test run is in its environment. */
function typed(command: string): string {
  const { HOME, PATH } = process.env
  const { status, stdout, stderr } = spawnSync(command, {
    cwd: clone,
    encoding: 'utf8',
    shell: true,
    timeout: longest_ms,
    maxBuffer: 2 ** 28,
    env: { HOME, PATH, NO_COLOR: '1', TERM: 'dumb' },
  })
  expect(status, `${command}\n${stdout.slice(-5000)}\n${stderr.slice(-5000)}`).toBe(0)
  return stdout
}

it('leads from a clone to a command of their own', { timeout: longest_ms }, () => {
  expect(steps.map(({ kind }) => kind)).toContain('changed')
  for (const step of steps) {
    if (step.kind === 'changed')
      execFileSync('git', ['apply', '--unidiff-zero'], { cwd: clone, input: step.diff, stdio: 'pipe' })
    else if (step.command.startsWith('git clone ')) copyTree()
    else if (step.command !== 'cd chargehand') {
      const text = typed(step.command)
      expect(shows(text, step.shown), `${step.command} shows:\n${text.slice(-5000)}`).toBe(true)
    }
  }
})
