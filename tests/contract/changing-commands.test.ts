// A command that changes what is kept says so: else a button that only shows more would do it again.

import { expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import { backUp } from '../../src/memory/opening/backup.ts'
import { connect } from '../../src/memory/opening/connect.ts'
import { migrate } from '../../src/memory/opening/migrate.ts'
import { migrations } from '../../src/memory/opening/migrations.ts'
import { memoryIn } from '../../src/memory/opening/open.ts'
import { moderator } from '../support/ask.ts'

it('every command whose example changes the memory declares it', async () => {
  const db = connect({ dataFolder: ':memory:' })
  await migrate(db, migrations)
  const assistant = createAssistant({
    commands,
    memory: memoryIn(db),
    clock: () => new Date('2026-05-02T10:00:00Z'),
    onFault: fault => {
      throw fault
    },
  })
  const changed = new Set<string>()
  for (const { name, examples } of commands) {
    for (const example of examples) {
      const before = await backUp(db)
      await assistant.answer(example, moderator)
      await assistant.settled()
      if ((await backUp(db)).join('\n') !== before.join('\n')) changed.add(name)
    }
  }
  await db.destroy()
  const silent = commands.filter(({ name, changes }) => changed.has(name) && !changes)
  expect(silent.map(({ name }) => name)).toEqual([])
  // Not because nothing was changed at all.
  expect(changed).toContain('kit save')
  expect(changed).toContain('house set')
})
