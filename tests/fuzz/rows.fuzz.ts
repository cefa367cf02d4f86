// Whatever stands in a row, by an older program or a hand that slipped: no answer is lost for it, and the rest goes on.

import fc from 'fast-check'
import { it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { backUp } from '../../src/memory/opening/backup.ts'
import { connect } from '../../src/memory/opening/connect.ts'
import { migrate } from '../../src/memory/opening/migrate.ts'
import { migrations } from '../../src/memory/opening/migrations.ts'
import { memoryIn } from '../../src/memory/opening/open.ts'
import { askingOf } from '../support/ask.ts'
import { tryDoor } from './door.ts'
import { someValue } from './grammar.ts'
import { askOfAll, stockedDatabase } from './stocked.ts'

interface Row {
  readonly table: string
  readonly row: Readonly<Record<string, unknown>>
}
const cell = fc.oneof(
  someValue,
  fc.constantFrom('{', '{}', '[]', 'null', '""', '{"kind":"soc"}', '1970-01-01T00:00:00.000Z', 'NaN'),
  fc.double({ noDefaultInfinity: true, noNaN: true }),
  fc.integer(),
  fc.constant(null),
)

it('rows', async () => {
  const from = await stockedDatabase()
  const rows = (await backUp(from)).slice(1, -1).map(line => JSON.parse(line) as Row)
  await from.destroy()
  const slip = fc.tuple(fc.nat(rows.length - 1), fc.nat(12), cell)
  await tryDoor('rows', fc.array(slip, { minLength: 1, maxLength: 3 }), async slips => {
    const database = connect({ dataFolder: ':memory:' })
    try {
      await migrate(database, migrations)
      const put = rows.map(({ table, row }) => ({ table, row: { ...row } }))
      for (const [which, column, value] of slips) {
        const row = put[which]?.row as Record<string, unknown>
        const names = Object.keys(row)
        row[names[column % names.length] as string] = value
      }
      // What the schema itself refuses was never stored.
      for (const { table, row } of put)
        await database
          .insertInto(table as 'kit')
          .values(row as never)
          .execute()
          .catch(() => {})
      const asking = await askingOf(commands, {
        memory: memoryIn(database),
        clock: () => new Date('2031-05-04T10:00:00Z'),
      })
      // A rule of the club that cannot be read may be a limit: nothing is answered without it.
      await askOfAll(
        asking,
        slips.some(([which]) => rows[which]?.table === 'house'),
      )
    } finally {
      await database.destroy()
    }
  })
})
