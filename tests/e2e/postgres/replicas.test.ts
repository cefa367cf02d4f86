// Two replicas on one PostgreSQL: a limit that was tightened by way of one holds in the other while the database is away.

import { expect, test } from 'vitest'
import { createLog } from '../../../src/program/log.ts'
import { openAssistant } from '../../../src/program/open-assistant.ts'
import { member, moderator } from '../../support/ask.ts'
import { findPostgres, startPostgres } from '../../support/postgres.ts'

test('a replica that nobody of the club has asked since knows the limit', { timeout: 60_000 }, async () => {
  const server = await startPostgres(findPostgres() ?? '')
  const open = () => openAssistant({ dataFolder: ':memory:', databaseUrl: server.url }, createLog('silent'))
  const [one, other] = await Promise.all([open(), open()])
  try {
    other.rounds.start()
    await other.rounds.stop()
    await one.assistant.answer('house set chemistry: LiPo rate: 0.3C', moderator)
    // A round begins with the start.
    other.rounds.start()
    await other.rounds.stop()
    await server.stop()
    const reply = await other.assistant.answer('current pack: 3S 1000 LiPo charger: 0.1-5A by 0.1 80W 1-6S', member)
    expect(reply.figures.find(({ key }) => key === 'setCurrent')?.value).toBe(0.3)
    expect(reply.cautions.map(({ key }) => key)).toContain('notLookedUp')
  } finally {
    await one.memory.close()
    await other.memory.close()
    await server.close()
  }
})
