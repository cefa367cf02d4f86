// What a person had deleted is in none of SQLite's files any longer, not even as what a page once held.

import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { openMemory } from '../../../src/memory/opening/open.ts'
import { directCommunityOf } from '../../../src/memory/owner.ts'

const secret = 'GRANDMOTHERS-HEIRLOOM'
const person = 'discord:4711'
let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'no-trace-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const filesWith = (text: string) => readdirSync(folder).filter(name => readFileSync(join(folder, name)).includes(text))

async function fill(memory: Awaited<ReturnType<typeof openMemory>>) {
  const owner = { scope: 'person' as const, id: person }
  for (let count = 0; count < 50; count++) {
    const entry = { owner, name: `wren${count}`, kind: 'pack' as const, notation: `3S 720mAh LiHV ${secret}` }
    await memory.kit.save(entry, 100)
  }
  const saying = { title: secret, kind: 'text' as const, content: secret, canonical: '' }
  await memory.answers.add({ community: directCommunityOf(person), place: 'discord:1', ...saying }, 10)
}

test('after forgetting somebody no file holds their words', async () => {
  const memory = await openMemory({ dataFolder: folder })
  await fill(memory)
  expect(filesWith(secret)).not.toEqual([])
  await memory.members.forget(person)
  expect(filesWith(secret)).toEqual([])
  expect(filesWith(person)).toEqual([])
  await memory.close()
})

test('nor does one hold what an earlier version had deleted without overwriting it', async () => {
  const memory = await openMemory({ dataFolder: folder })
  await fill(memory)
  await memory.close()
  const careless = new DatabaseSync(join(folder, 'chargehand.db'))
  careless.exec('pragma secure_delete = off; pragma user_version = 0; delete from kit; delete from answers')
  careless.close()
  expect(filesWith(secret)).not.toEqual([])
  const again = await openMemory({ dataFolder: folder })
  await again.members.forget(person)
  expect(filesWith(secret)).toEqual([])
  await again.close()
})

test('it is deleted also while somebody else reads', async () => {
  const memory = await openMemory({ dataFolder: folder })
  await fill(memory)
  const reader = new DatabaseSync(join(folder, 'chargehand.db'))
  reader.exec('begin; select * from kit')
  reader.prepare('select count(*) from kit').get()
  await memory.members.forget(person)
  expect((await memory.members.export(person)).kit).toEqual([])
  reader.close()
  await memory.close()
})
