import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Reply } from '../../../src/assistant/reply.ts'
import { generalCaution } from '../../../src/assistant/verdict.words.ts'
import type { Chart } from '../../../src/charts/chart.ts'
import { english } from '../../../src/ground/locale.ts'
import { keepFiles } from '../../../src/room/files.ts'
import { plainReply } from '../../support/plain-command.ts'
import { chargeSample, planSample } from '../charts/samples.ts'

let folder: string
beforeEach(async () => {
  folder = join(await mkdtemp(join(tmpdir(), 'chargehand-')), 'room')
})
afterEach(() => rm(join(folder, '..'), { recursive: true }))

const replyWith = (charts: readonly Chart[], documents: Reply['documents'] = []): Reply =>
  plainReply(
    { command: 'time', readAs: 'a test' },
    { headline: 'A test.', cautions: [generalCaution(english('.'))], charts, documents },
  )

describe('files of a reply in the room', () => {
  it('are told by path, pictures with what they show', async () => {
    const lines = await keepFiles(replyWith([chargeSample, planSample]), folder)
    expect(lines).toHaveLength(2)
    for (const [at, line] of lines.entries()) {
      const path = /^Picture: (.+)$/m.exec(line)?.[1] ?? ''
      expect((await readFile(path)).subarray(1, 4).toString()).toBe('PNG')
      expect(line).toContain([chargeSample, planSample][at]?.alternative)
    }
  })

  it('are kept once, however often the question is asked', async () => {
    const first = await keepFiles(replyWith([chargeSample]), folder)
    expect(await keepFiles(replyWith([chargeSample]), folder)).toEqual(first)
    expect(await readdir(folder)).toHaveLength(1)
  })

  it('hold a document word for word, for the asker alone', async () => {
    const [line] = await keepFiles(
      replyWith([], [{ name: 'a.json', mediaType: 'application/json', text: '{}' }]),
      folder,
    )
    expect(line).toBe(`Document: ${join(folder, 'a.json')}\n`)
    expect(await readFile(join(folder, 'a.json'), 'utf8')).toBe('{}')
  })

  it('make no folder where there is none to keep', async () => {
    expect(await keepFiles(replyWith([]), folder)).toEqual([])
    await expect(readdir(folder)).rejects.toThrow('ENOENT')
  })
})
