// Whatever table is read into a log: it is read or told why not, and what was saved comes out and in again unchanged.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { moderator } from '../support/ask.ts'
import { demoAsking } from '../support/demo-asking.ts'
import { endFaultless } from '../support/end-faultless.ts'
import { tryDoor } from './door.ts'
import { someValue } from './grammar.ts'

const day = fc.constantFrom('2031-05-03', '3.5.2031', '2031-02-30', '2030-12-31T23:59', '1.1.31', '0000-00-00', 'today')
const heading = fc.constantFrom(
  'put back mAh',
  'from V',
  'to',
  'took min',
  'current A',
  'ir (mΩ)',
  'cells',
  'temp °C',
  'used',
  'notes',
)
const cell = fc.oneof(
  fc.nat(900).map(String),
  fc.constantFrom('3,62', '"3.7;1"', '""', '1:02', '40%', '-', '3.7 3.8 3.7'),
  someValue,
)
const table = fc.tuple(
  fc.constantFrom(';', ',', '|', '\t', ' '),
  fc.array(heading, { maxLength: 6 }),
  fc.array(fc.tuple(day, fc.array(cell, { maxLength: 7 })), { maxLength: 6 }),
  fc.constantFrom('\n', ' ', '\r\n', '\u2028'),
)

it('csv', async () => {
  const asking = await demoAsking(commands, { clock: () => new Date('2031-05-04T10:00:00Z') })
  let asked = 0
  await tryDoor('csv', table, async ([between, headings, rows, end]) => {
    asked += 1
    const here = { ...moderator, asker: { ...moderator.asker, id: `room:${asked}` } }
    const text = [['day', ...headings], ...rows.map(([when, cells]) => [when, ...cells])]
      .map(cells => cells.join(between))
      .join(end)
    const ask = (command: string, options: Record<string, string>) =>
      asking.assistant.answer({ command, options }, here)
    await ask('kit save', { name: 'fuzz', pack: '3S 720 LiHV' })
    const reply = await ask('log import', { name: 'fuzz', save: 'yes', rows: text })
    expect([asking.faults, reply.fault]).toEqual([[], undefined])
    const out = (await ask('log export', { name: 'fuzz' })).documents[0]?.text
    if (out === undefined) return
    await ask('log import', { name: 'fuzz', save: 'yes', rows: out })
    expect((await ask('log export', { name: 'fuzz' })).documents[0]?.text).toBe(out)
    expect(asking.faults).toEqual([])
  })
  await endFaultless(asking)
})
