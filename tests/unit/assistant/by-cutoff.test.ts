// The volts that a charge is to end at name the likeliest type, never for sure; what was read off a pack names none.

import { afterEach, beforeEach, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Asking } from '../../support/ask.ts'
import { demoAsking } from '../../support/demo-asking.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
beforeEach(async () => {
  asking = await demoAsking(commands)
})
afterEach(() => endFaultless(asking))

it.each([
  ['how do i set my charger for 1S 4.35 450', '1S 450mAh LiHV'],
  ['cutoff 4.35 on a 1s 450, how many amps', '1S 450mAh LiHV'],
  ['4s 1500 program with 17.4 V, what current', '4S 1500mAh LiHV'],
  ['what do i set for 2s 1300 that ends at 7.2 V', '2S 1300mAh LiFe'],
])('"%s" is taken as %s', async (text, pack) => {
  const reply = await asking.ask(text)
  expect([reply.verdict, reply.question]).toEqual(['go with care', `current pack: ${pack} told: chemistryAssumed`])
})

it.each(['my 1s 450 reads 4.35, what do i set', 'can i set my 4s 1500 to 4.35', 'set 4s 1500 lipo to 4.35'])(
  '"%s" stays refused',
  async text => expect((await asking.ask(text)).verdict).toBe('do not charge'),
)

it('holds on when the rest is told', async () => {
  await asking.ask('how do I set 1S 4.35')
  expect((await asking.ask('450')).question).toBe('current pack: 1S 450mAh LiHV told: chemistryAssumed')
})
