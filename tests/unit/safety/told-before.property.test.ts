// Whatever lasts and was told of a pack: no ordinary question about that pack ever gets a go, with any talk between.

import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Danger, dangers } from '../../../src/charging/situation/dangers.ts'
import { dangersIn } from '../../../src/language/dangers/index.ts'
import { type Asking, member } from '../../support/ask.ts'
import { cases } from '../../support/cases.ts'
import { demoAsking } from '../../support/demo-asking.ts'
import { endFaultless } from '../../support/end-faultless.ts'
import { dangerWordings } from '../language/danger-wordings.ts'

let asking: Asking
beforeAll(async () => {
  asking = await demoAsking(commands)
})
afterAll(() => endFaultless(asking))

const lasting = (Object.keys(dangers) as Danger[]).filter(danger => dangers[danger].stays === 'lasts')
const tellings = lasting.flatMap(danger => (dangerWordings.get(danger) ?? []).map(wording => ({ danger, wording })))
const packs = ['wren', 'plover', '3S 850mAh LiHV', '6s 1300 lipo', '2S 2600 Li-ion']
/** "@" is the pack, "~" what is told. */
const ways = [
  ['my @: ~'],
  ['what amps for my @', '~'],
  ['about the @, ~, what now'],
  ['how long for @ at 0.2A', 'by the way, ~'],
]
const between = [
  'thanks',
  'hello again',
  'what does C mean',
  'nice weather today',
  'what amps for a 4s 5000 life',
  'it looks fine now',
  'it went down by itself',
  'why is the last bit so slow',
  'kit list',
]
const questions = [
  'how long for @',
  'what amps for my @',
  'what do i set for @ from 3.7V',
  'time pack: @ current: 0.2A',
  'current pack: @',
  'can i charge 2 of my @ on a board',
  'storage for @',
  'plan packs: 2x @; 4S 1500 LiPo chargers: 0.1-5A by 0.1 80W',
]
let conversation = 0

describe('a danger that lasts', () => {
  it('never lets a question about its pack get a go', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...tellings),
        fc.constantFrom(...packs),
        fc.constantFrom(...ways),
        fc.array(fc.constantFrom(...between), { maxLength: 3 }),
        fc.constantFrom(...questions),
        async ({ danger, wording }, pack, way, talk, question) => {
          const told = way.map(text => text.replace('@', pack).replace('~', wording))
          // What is not heard as this danger is judged by other tests.
          fc.pre(told.some(text => dangersIn(text).told.some(one => one.danger === danger)))
          conversation += 1
          const here = { ...member, place: { id: `room:${conversation}`, direct: false } }
          const asked = [...told, ...talk, question.replace('@', pack)]
          let verdict: string | undefined
          for (const text of asked) ({ verdict } = await asking.ask(text, here))
          expect(verdict, asked.join('\n')).not.toBe('go')
        },
      ),
      cases(600),
    )
  })
})
