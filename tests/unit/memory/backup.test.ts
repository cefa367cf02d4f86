// Backups: whole, restorable into an empty memory only, also from an older program.

import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Migration } from 'kysely/migration'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { Database } from '../../../src/memory/database.ts'
import { backUp, checkBackup, restore } from '../../../src/memory/opening/backup.ts'
import { migrate } from '../../../src/memory/opening/migrate.ts'
import { migrations } from '../../../src/memory/opening/migrations.ts'
import { memoryIn, openMemory } from '../../../src/memory/opening/open.ts'
import { connectTestDatabase } from '../../support/test-memory.ts'

const feathers: Migration = {
  up: async db => {
    await db.schema.createTable('feathers').addColumn('id', 'text').execute()
  },
}

const restoreInto = async (db: Database, lines: readonly string[], known: typeof migrations = migrations) =>
  restore(db, await checkBackup(lines, known), known)

describe('a backup', () => {
  let from: Database
  let to: Database
  beforeEach(async () => {
    from = await connectTestDatabase()
    to = await connectTestDatabase()
    await migrate(from, migrations)
  })
  afterEach(async () => {
    await from.destroy()
    await to.destroy()
  })

  const wren = {
    owner: { scope: 'person', id: 'room:wim' },
    name: 'wren "ø"\n',
    kind: 'pack',
    notation: '3S 720mAh LiHV',
  } as const

  test('restores every row of more than one batch', async () => {
    const memory = memoryIn(from)
    for (let i = 0; i < 1201; i++) await memory.questions.keep(`question ${i}`)
    await memory.kit.save(wren, 10)
    await memory.house.change('room:club', [{ rule: 'gentleLiIon', value: true }])
    const lines = await backUp(from)
    expect(await restoreInto(to, lines)).toBe(1203)
    expect((await backUp(to)).toSorted()).toEqual(lines.toSorted())
    expect(await memoryIn(to).kit.find([wren.owner], [wren.name])).toEqual([wren])
  })

  test('of an older program is brought to this one’s schema', async () => {
    const id = await memoryIn(from).questions.keep('help')
    await restoreInto(to, await backUp(from), { ...migrations, '999-feathers': feathers })
    expect(await memoryIn(to).questions.find(id)).toBe('help')
    expect((await to.introspection.getTables()).map(({ name }) => name)).toContain('feathers')
  })

  test('of a newer program is refused', async () => {
    await migrate(from, { ...migrations, '999-feathers': feathers })
    await expect(restoreInto(to, await backUp(from))).rejects.toThrow('newer version')
  })

  test('is not restored over a memory', async () => {
    await migrate(to, migrations)
    await expect(restoreInto(to, await backUp(from))).rejects.toThrow('There is a memory already.')
  })

  test('that lost a line, its end or its sense is refused and leaves nothing behind', async () => {
    await memoryIn(from).questions.keep('help')
    const lines = await backUp(from)
    const broken = [[], lines.slice(0, -1), lines.toSpliced(1, 1), ['{}', ...lines.slice(1)], ['nonsense']]
    for (const some of broken) {
      await expect(restoreInto(to, some)).rejects.toThrow('not a whole backup')
    }
    const alien = [lines[0] ?? '', '{"table":"nest","row":{"id":"1"}}', '{"rows":1}']
    await expect(restoreInto(to, alien)).rejects.toThrow('does not fit the tables')
    expect(await to.introspection.getTables({ withInternalKyselyTables: true })).toEqual([])
  })

  test('in which one letter is another is refused by its checksum, and so is one line in another place', async () => {
    const memory = memoryIn(from)
    await memory.kit.save(wren, 10)
    await memory.questions.keep('help')
    const lines = await backUp(from)
    const changed = lines.map(line => line.replace('720mAh', '7200mAh'))
    expect(changed).not.toEqual(lines)
    const [head = '', first = '', second = '', ...rest] = lines
    const unchecked = lines.map(line => line.replace('"sha256"', '"sha257"'))
    for (const wrong of [changed, [head, second, first, ...rest], unchecked]) {
      await expect(restoreInto(to, wrong)).rejects.toThrow('not a whole backup')
    }
  })

  test('of an earlier version, which had no checksum, is restored', async () => {
    await memoryIn(from).questions.keep('help')
    const lines = (await backUp(from)).map(line => line.replace(/,"sha256":"\w+"/, ''))
    expect(lines.join()).not.toContain('sha256')
    expect(await restoreInto(to, lines)).toBe(1)
  })

  test('of nothing is refused', async () => {
    await expect(backUp(to)).rejects.toThrow('There is no memory here')
  })
})

describe('the scripts', { timeout: 60_000 }, () => {
  let folder: string
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'chargehand-backup-'))
  })
  afterEach(() => rmSync(folder, { recursive: true }))

  const runScript = (script: string, data: string, file: string) => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [`src/program/${script}.ts`, join(folder, file)], {
      env: { PATH: process.env.PATH, CHARGEHAND_DATA: join(folder, data) },
      encoding: 'utf8',
    })
    return { status, said: stdout + stderr }
  }

  test('back up a memory that is open, and restore it elsewhere', async () => {
    const memory = await openMemory({ dataFolder: join(folder, 'one') })
    const id = await memory.questions.keep('help')
    expect(runScript('backup', 'one', 'kept')).toMatchObject({ status: 0 })
    await memory.close()
    expect(statSync(join(folder, 'kept')).mode & 0o777).toBe(0o600)

    expect(runScript('restore', 'two', 'kept')).toMatchObject({ status: 0 })
    const restored = await openMemory({ dataFolder: join(folder, 'two') })
    expect(await restored.questions.find(id)).toBe('help')
    await restored.close()
  })

  test('say in one line what is wrong, and change nothing', async () => {
    expect(runScript('backup', 'none', 'kept')).toEqual({
      status: 1,
      said: `There is no memory in ${join(folder, 'none')}.\n`,
    })
    expect(existsSync(join(folder, 'none'))).toBe(false)

    await (await openMemory({ dataFolder: join(folder, 'one') })).close()
    writeFileSync(join(folder, 'kept'), 'mine')
    expect(runScript('backup', 'one', 'kept').said).toContain('is there already')
    expect(readFileSync(join(folder, 'kept'), 'utf8')).toBe('mine')
    expect(runScript('restore', 'new', 'kept')).toEqual({
      status: 65,
      said: 'This is not a whole backup of the memory.\n',
    })
    expect(existsSync(join(folder, 'new'))).toBe(false)
  })
})
