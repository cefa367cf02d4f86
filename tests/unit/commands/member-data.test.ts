// What is kept about a person: handed out where only they read it, deleted when they confirm.

import { afterEach, beforeEach, expect, test } from 'vitest'
import { type Asking, askingOf, member, otherMember } from '../../support/ask.ts'
import { commandNamed } from '../../support/commands.ts'
import { endFaultless } from '../../support/end-faultless.ts'

const kitSave = commandNamed('kit save')
const exportMe = commandNamed('export me')
const forgetMe = commandNamed('forget me')

const alone = { ...member, place: { id: 'room:wim', direct: true } }

let asking: Asking
beforeEach(async () => {
  asking = await askingOf([kitSave, exportMe, forgetMe])
  await asking.ask('kit save name: wren pack: 3S 720 LiHV')
})
afterEach(() => endFaultless(asking))

const kept = async (person = member) =>
  (await asking.memory.members.export(person.asker.id)).kit.map(({ name }) => name)

test('the export is a document with everything', async () => {
  const { headline, documents } = await asking.ask('export me', alone)
  expect(headline).toBe('Records that I keep about you: 2. All of them are here.')
  expect(JSON.parse(documents[0]?.text ?? '')).toEqual({
    kit: [{ owner: { scope: 'person', id: 'room:wim' }, name: 'wren', kind: 'pack', notation: '3S 720mAh LiHV' }],
    answered: [],
    reminders: [],
    waiting: [],
    log: [],
    alone: [],
    learned: [],
    pending: [],
    changed: [expect.objectContaining({ person: 'room:wim', name: 'Wim' })],
  })
})

test('where others read along nothing is handed out', async () => {
  const reply = await asking.ask('export me')
  expect(reply.headline).toContain('direct message')
  expect(JSON.stringify(reply)).not.toContain('wren')
})

test('nothing is deleted without the word', async () => {
  const reply = await asking.ask('forget me')
  expect(reply.headline).toContain('forget me confirm: forget')
  expect((await asking.ask('forget me confirm: yes')).problem).toBeDefined()
  expect(await kept()).toEqual(['wren'])
})

test('with the word it is, and only the asker’s', async () => {
  await asking.ask('kit save name: owl pack: 2S 450 LiPo', otherMember)
  expect((await asking.ask('forget me confirm: forget')).headline).toContain('deleted')
  expect(await kept()).toEqual([])
  expect(await kept(otherMember)).toEqual(['owl'])
  expect((await asking.ask('export me', alone)).headline).toBe('I keep nothing about you.')
})
