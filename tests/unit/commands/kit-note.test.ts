// A danger that is noted of a pack of the kit holds for everybody, until it is taken off.

import { afterEach, beforeEach, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, member, moderator } from '../../support/ask.ts'
import { demoAsking } from '../../support/demo-asking.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
beforeEach(async () => {
  asking = await demoAsking(commands)
})
afterEach(() => endFaultless(asking))
const verdict = async (text: string, by = member) => (await asking.ask(text, by)).verdict

it('is offered to who may change the kit, and holds for others and in every command', async () => {
  expect(
    (await asking.ask('my wren is puffed')).followUps.filter(({ question }) => question.includes('note:')),
  ).toEqual([])
  const [offered] = (await asking.ask('the wren is puffed', moderator)).followUps
  expect(offered?.question).toBe('kit save name: wren pack: 3S 720mAh LiHV note: swollen for: club')
  await asking.ask(offered?.question ?? '', moderator)
  const elsewhere = { ...member, place: { id: 'room:field', direct: false } }
  for (const text of ['what amps for wren', 'current pack: wren', 'storage for my wren'])
    expect([text, await verdict(text, elsewhere)]).toEqual([text, 'do not charge'])
  expect(await verdict('what amps for plover', elsewhere)).toBe('go')
  expect((await asking.ask('kit list', elsewhere)).working.join('\n')).toContain(
    'wren, pack 3S 720mAh LiHV, noted: swollen',
  )
})

it('outlives saving anew and a new name, and ends when it is taken off', async () => {
  await asking.ask('kit save name: linnet pack: 3S 850 LiPo note: wet')
  await asking.ask('kit save name: linnet pack: 3S 850 LiPo')
  await asking.ask('kit rename name: linnet to: finch')
  expect(await verdict('current pack: finch')).toBe('do not charge')
  expect((await asking.ask('kit save name: finch pack: 3S 850 LiPo note: none')).headline).not.toContain('Noted')
  expect(await verdict('current pack: finch')).toBe('go')
})
