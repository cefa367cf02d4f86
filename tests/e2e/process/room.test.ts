// The room and the single question as a shell sees them: exit codes, what stands on which stream, nothing lost.

import { execFile, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { afterAll, describe, expect, it } from 'vitest'

const data = mkdtempSync(join(tmpdir(), 'chargehand-room-'))
const env = { PATH: process.env.PATH, CHARGEHAND_DATA: data }
afterAll(() => rmSync(data, { recursive: true }))

const run = (script: string, words: readonly string[], input = '') =>
  spawnSync(process.execPath, [script, ...words], { env, input, encoding: 'utf8' })

const ask = (...words: string[]) => run('src/room/ask.ts', words)

describe('one question', () => {
  it('answered: exit 0, the answer on standard output, nothing on the other', () => {
    const { status, stdout, stderr } = ask('current pack: 3S 720 LiHV charger: 0.5/1/2/4A')
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
    expect(stdout).toContain('4.35')
  })

  it('refused as unsafe is answered too: exit 0', () => {
    const { status, stdout } = ask('current pack: 3S 720 LiHV from: 2.1V per cell')
    expect(status).toBe(0)
    expect(stdout).toMatch(/^NO ⛔ Do not charge/)
  })

  it.each(['', 'flibber', 'current pack: 0S 720 LiHV', '-5A', 'time pack: 3S 720 LiHV current: -5A'])(
    'with a problem, "%s": exit 2 and something that would do',
    question => {
      const { status, stdout, stderr } = ask(question)
      expect({ status, stderr }).toEqual({ status: 2, stderr: '' })
      expect(stdout).toMatch(/^ASK ❓ .*(?:\nTry: |\n1 )/s)
    },
  )

  it('as JSON: one document with the keys that scripts rely on', () => {
    const { status, stdout } = ask(
      '--json',
      'time pack: 1S 5450mAh LiPo current: 5.45A from: 3V per cell to: 4.10V until: 0.545A resistance: 8mΩ',
    )
    expect(status).toBe(0)
    const reply = JSON.parse(stdout)
    expect(reply).toMatchObject({
      command: 'time',
      readAs: expect.stringContaining('5450mAh LiPo'),
      verdict: 'go',
      headline: expect.any(String),
      working: expect.arrayContaining([expect.any(String)]),
      cautions: expect.arrayContaining([expect.any(String)]),
      deference: expect.any(String),
    })
    const figures = Object.fromEntries(reply.figures.map((figure: { key: string }) => [figure.key, figure]))
    expect(figures.chargeTime).toMatchObject({ unit: 's', low: expect.any(Number), high: expect.any(Number) })
    expect(figures.timeToCutoff).toMatchObject({ unit: 's' })
    expect(figures.chargeIn).toMatchObject({ unit: 'Ah' })
    expect(figures.energyIn).toMatchObject({ unit: 'Wh' })
    expect(figures.chargeTime.value).toBeGreaterThan(figures.timeToCutoff.value)
  })

  it.each([
    ['current pack: 3S 720 LiHV charger: 0.5/1/2/4A', ['setCurrent', 'cutoffPerCell', 'cRate']],
    ['source source: PD 65W pack: 3S 720 LiHV count: 4', ['totalTime', 'inputPower']],
    ['source source: 4S 5000 Li-ion pack: 3S 720 LiHV', ['packCount', 'stopVoltage', 'sourceEnergyLeft']],
  ])('%s has the figures that scripts rely on', (question, keys) => {
    const reply = JSON.parse(ask('--json', question).stdout)
    expect(reply.figures.map((figure: { key: string }) => figure.key)).toEqual(expect.arrayContaining(keys))
  })

  it('a data folder that cannot be used: an exit code of its kind and one plain line', () => {
    const broken = spawnSync(process.execPath, ['src/room/ask.ts', 'help'], {
      env: { ...env, CHARGEHAND_DATA: '/dev/null/nowhere' },
      encoding: 'utf8',
    })
    expect(broken.status).toBe(73)
    expect(broken.stdout).toBe('')
    expect(broken.stderr).not.toContain('.ts:')
  })
})

describe('the room by pipe', () => {
  it('greets, answers three questions of the club, then each line, and ends with the input: exit 0', () => {
    const lines = 'how long for plover at 0.3A\n\n   \ncurrent pack: 99S 720 LiPo\ncurrent pack: wren'
    const { status, stdout, stderr } = run('src/main.ts', [], lines)
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
    expect(stdout).toMatch(/^Welcome to the bench of the Heron Meadow Electric Flyers/)
    expect(stdout.match(/^(?:GO|CARE|NO|ASK) /gm)).toHaveLength(6)
    expect(stdout).toContain('plover (2S 450mAh LiPo)')
    expect(stdout).toContain('At "99S"')
    expect(stdout.indexOf('wren (')).toBeGreaterThan(stdout.indexOf('At "99S"'))
  })

  it('puts up a card of whoever sits there, its change, and an emergency, where it is to be told', () => {
    const lines = [
      'answer save title: Where we charge text: At the bench.',
      'answer edit title: Where we charge text: In the box.',
      'house set alerts: here',
      'my pack is on fire',
    ]
    const { stdout } = run('src/main.ts', [], lines.join('\n'))
    expect(stdout.match(/(?<=^(?:On|Changed on) the board\n).*?(?=[.,])/gm)).toEqual([
      'Where we charge: At the bench',
      'Where we charge: In the box',
      'EMERGENCY',
    ])
  })

  it('leaves on request, and takes no line after it', () => {
    const { status, stdout } = run('src/main.ts', [], 'quit\nhelp\n')
    expect(status).toBe(0)
    expect(stdout.match(/^(?:GO|CARE|NO|ASK) /gm)).toHaveLength(3)
  })

  it('ends quietly when its reader has seen enough', async () => {
    const shell = `"${process.execPath}" src/main.ts </dev/null | head -n 1`
    const { stdout, stderr } = await promisify(execFile)('sh', ['-c', shell], { env })
    expect(stdout).toContain('Welcome')
    expect(stderr).toBe('')
  })
})
