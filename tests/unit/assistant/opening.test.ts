// Words that only open a message keep nothing from being found, and a greeting stays one.

import { afterEach, beforeEach, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, moderator } from '../../support/ask.ts'
import { demoAsking } from '../../support/demo-asking.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
beforeEach(async () => {
  asking = await demoAsking(commands)
  await asking.ask('save a standard answer titled Gate code: ask at the desk', moderator)
})
afterEach(() => endFaultless(asking))

it.each(['hey', 'so', 'ok and', 'right then,', 'um', 'morning all,', 'listen', 'well,', 'quick question:', 'yo'])(
  '"%s" stands before a title, a command, a question and a danger',
  async opening => {
    const ask = async (text: string) => asking.ask(`${opening} ${text}`)
    expect((await ask('gate code')).lines.join(' ')).toContain('ask at the desk')
    expect((await ask("what's the gate code")).lines.join(' ')).toContain('ask at the desk')
    expect((await ask('kit list')).command).toBe('kit list')
    expect((await ask('how long for 3s 2200 lipo at 2 A')).question).toBe('time pack: 3S 2200mAh LiPo current: 2A')
    expect((await ask('my 3s 2200 is puffed')).verdict).toBe('do not charge')
  },
)

it.each(['hey', 'hey guys', 'hi there everyone', 'good morning, how are you today', 'hello my name is Jo'])(
  '"%s" is answered as a greeting',
  async text => expect((await asking.ask(text)).command).toBe('hello'),
)

it('values stand where they were typed', async () => {
  const text = 'morning all, how long for 3s 2200 lipo'
  const [value] = (await asking.ask(text)).understood?.values ?? []
  expect(text.slice(value?.start, value?.end)).toBe('3s 2200 lipo')
})
