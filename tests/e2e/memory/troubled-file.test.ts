// A real SQLite file that another program holds, or whose disk is full: charging goes on, and saving says that it did not.

import { mkdtempSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { lookedUp } from '../../../src/assistant/lookup.ts'
import { openMemory } from '../../../src/memory/opening/open.ts'
import { askingOf } from '../../support/ask.ts'
import { onSmallDisk } from '../../support/small-disk.ts'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'troubled-file-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const notSaved = 'Not saved: my memory does not answer.'

async function openAsking(dataFolder: string) {
  const memory = await openMemory({ dataFolder })
  const { ask } = await askingOf(commands, { memory })
  const headlineOf = async (question: string) => String((await ask(question)).headline)
  const save = (name: string) => headlineOf(`kit save name: ${name} pack: 3S 720 LiPo`)
  return { memory, headlineOf, save }
}

test('held by another program, it waits half a second and comes back by itself', async () => {
  const { memory, headlineOf, save } = await openAsking(folder)
  const before = await save('wren')
  const other = new DatabaseSync(join(folder, 'chargehand.db'))
  other.exec('begin immediate')
  const since = performance.now()
  expect(await save('plover')).toBe(notSaved)
  expect(performance.now() - since).toBeLessThan(1000)
  expect(await headlineOf('current pack: wren')).toContain('12.6 V')
  other.exec('rollback')
  other.close()
  expect(await save('plover')).toBe(before.replace('wren', 'plover'))
  await memory.close()
})

test('taken away, it says that it saves nothing, and goes on where it is put back', async () => {
  const { memory, headlineOf, save } = await openAsking(folder)
  const before = await save('wren')
  const names = readdirSync(folder)
  for (const name of names) renameSync(join(folder, name), join(folder, `${name}.aside`))
  expect(await save('plover')).toBe(notSaved)
  expect(await lookedUp(memory.house.rules(''))).toBeUndefined()
  expect(await headlineOf('current pack: 3S 720 LiPo')).toContain('12.6 V')
  for (const name of names) renameSync(join(folder, `${name}.aside`), join(folder, name))
  expect(await save('plover')).toBe(before.replace('wren', 'plover'))
  await memory.close()
})

test('on a full disk, it answers and says that it saved nothing', context =>
  onSmallDisk(context, folder, '2m', async small => {
    const { memory, headlineOf, save } = await openAsking(join(small, 'data'))
    await save('wren')
    expect(() => writeFileSync(join(small, 'ballast'), Buffer.alloc(4 * 1024 * 1024))).toThrow('ENOSPC')
    const said: string[] = []
    // What was set aside for the log already is used up first.
    for (let count = 0; count < 200 && said.at(-1) !== notSaved; count++) said.push(await save(`plover${count}`))
    expect(said.at(-1)).toBe(notSaved)
    expect(await headlineOf('current pack: wren')).toContain('12.6 V')
    rmSync(join(small, 'ballast'))
    expect(await save('siskin')).not.toBe(notSaved)
    await memory.close()
  }))
