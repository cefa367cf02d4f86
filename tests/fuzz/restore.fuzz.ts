// Whatever backup is restored: it is refused in plain words, or all of it is there and the assistant answers from it.

import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { MemoryError } from '../../src/memory/memory-error.ts'
import { backUp, checkBackup, restore } from '../../src/memory/opening/backup.ts'
import { connect } from '../../src/memory/opening/connect.ts'
import { migrations } from '../../src/memory/opening/migrations.ts'
import { memoryIn } from '../../src/memory/opening/open.ts'
import { askingOf } from '../support/ask.ts'
import { tryDoor } from './door.ts'
import { broken } from './grammar.ts'
import { askOfAll, stockedDatabase } from './stocked.ts'

const sum = (lines: readonly string[]) => createHash('sha256').update(lines.join('\n')).digest('hex')

it('restore', async () => {
  const from = await stockedDatabase()
  const whole = await backUp(from)
  await from.destroy()
  const line = fc.nat(whole.length - 2)
  const changed = fc.record({
    left: fc.subarray(whole.slice(1, -1)),
    put: fc.array(
      line.chain(at => broken(fc.constant(JSON.parse(whole[at] ?? '{}') as object))),
      { maxLength: 2 },
    ),
    isSummed: fc.integer({ min: 0, max: 4 }).map(value => value > 0),
    cut: fc.option(fc.nat(200), { nil: undefined }),
  })
  await tryDoor('restore', changed, async ({ left, put, isSummed, cut }) => {
    const body = [whole[0] ?? '', ...left, ...put.map(one => JSON.stringify(one) ?? 'undefined')]
    const end = JSON.stringify({ rows: body.length - 1, sha256: isSummed ? sum(body) : 'f00' })
    const lines = [...body, end]
      .join('\n')
      .slice(0, cut && -cut)
      .split('\n')
    const to = connect({ dataFolder: ':memory:' })
    try {
      const backup = await checkBackup(lines, migrations)
      expect(await restore(to, backup, migrations)).toBe(backup.rows.length)
      const clock = () => new Date('2031-05-04T10:00:00Z')
      const isOfHouse = (one: unknown) => (one as { table?: unknown } | null)?.table === 'house'
      await askOfAll(await askingOf(commands, { memory: memoryIn(to), clock }), put.some(isOfHouse))
    } catch (error) {
      expect(error).toBeInstanceOf(MemoryError)
      expect((error as Error).message).not.toMatch(/\.ts:|undefined|\[object/)
    } finally {
      await to.destroy()
    }
  })
})
