// The thread that writes to SQLite ends in the midst of a change: nothing of it stands, and the next is made.

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Worker } from 'node:worker_threads'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import type { Memory } from '../../../src/memory/memory.ts'
import { faultOfMemory } from '../../../src/memory/memory-error.ts'
import { openMemory } from '../../../src/memory/opening/open.ts'

let folder: string
let memory: Memory
const posted = vi.spyOn(Worker.prototype, 'postMessage')
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'writer-ends-'))
  memory = await openMemory({ dataFolder: folder })
})
afterEach(async () => {
  posted.mockRestore()
  await memory.close()
  rmSync(folder, { recursive: true })
})

const owner = { scope: 'person', id: 'room:ada' } as const
const save = (kept: Memory, name: string) =>
  kept.kit.save({ owner, name, kind: 'pack', notation: '3S 720mAh LiHV' }, 10)

test('half a change is none', async () => {
  const change = memory.together(async kept => {
    await save(kept, 'wren')
    await (posted.mock.contexts.at(-1) as Worker).terminate()
    await save(kept, 'plover')
  })
  expect(faultOfMemory(await change.catch(error => error))).toBe('away')
  expect(await memory.kit.count(owner)).toBe(0)
  expect(await save(memory, 'siskin')).toBe('saved')
  expect(await memory.kit.count(owner)).toBe(1)
})
