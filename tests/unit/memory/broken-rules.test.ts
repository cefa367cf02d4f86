// A limit of the club that cannot be read is never taken for none: nothing is answered without it.

import { afterEach, beforeEach, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Database } from '../../../src/memory/database.ts'
import { migrate } from '../../../src/memory/opening/migrate.ts'
import { migrations } from '../../../src/memory/opening/migrations.ts'
import { memoryIn } from '../../../src/memory/opening/open.ts'
import { askingOf } from '../../support/ask.ts'
import { connectTestDatabase } from '../../support/test-memory.ts'

let database: Database
beforeEach(async () => {
  database = await connectTestDatabase()
  await migrate(database, migrations)
})
afterEach(() => database.destroy())

async function answeredUnder(rule: string, chemistry: string, value: string) {
  await database.insertInto('house').values({ community: 'room:heron-meadow', rule, chemistry, value }).execute()
  const asking = await askingOf(commands, { memory: memoryIn(database) })
  return { reply: await asking.ask('current pack: 3S 720 LiHV temperature: 20°C'), faults: asking.faults }
}

it.each([
  ['maxRate_C', 'LiHV', '"0.8C"'],
  ['maxRate_C', 'LiHV', 'null'],
  ['maxRate_C', '', '0.8'],
  ['fullPerCell_V', 'LiHV', '{}'],
  ['storagePerCell_V', 'LiPo', ''],
  ['coldest_C', '', '"8"'],
  ['coldest_C', 'LiHV', '8'],
  ['gentleLiIon', '', '"yes"'],
  ['chargeEnd', '', '"whenever"'],
  ['chargeEnd', '', '0'],
])('%s of "%s" as %s', async (rule, chemistry, value) => {
  const { reply, faults } = await answeredUnder(rule, chemistry, value)
  expect(reply.fault).toBeDefined()
  expect(reply.verdict).toBeUndefined()
  expect(faults).toHaveLength(1)
})

it('a limit that can be read holds', async () => {
  const { reply, faults } = await answeredUnder('maxRate_C', 'LiHV', '0.5')
  expect(faults).toEqual([])
  expect(reply.figures.find(({ key }) => key === 'setCurrent')?.value).toBeCloseTo(0.36)
})

it('of one club stops no other', async () => {
  const { house } = memoryIn(database)
  await house.change('room:long-field', [{ rule: 'gentleLiIon', value: true }])
  await answeredUnder('coldest_C', '', '"8"')
  expect([...(await house.everyones()).keys()]).toEqual(['room:long-field'])
})
