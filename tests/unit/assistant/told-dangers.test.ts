// A danger that was told stays: with its pack or around the asker, until a fact ends it and never by a wish.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Reply } from '../../../src/assistant/reply.ts'
import { type Asking, member, otherMember } from '../../support/ask.ts'
import { demoAsking } from '../../support/demo-asking.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
let now = new Date('2031-05-03T10:00:00Z')

beforeEach(async () => {
  asking = await demoAsking(commands, { clock: () => now })
})
afterEach(() => endFaultless(asking))

/** The verdicts of one after another. */
async function verdicts(...texts: readonly string[]): Promise<readonly Reply['verdict'][]> {
  const found: Reply['verdict'][] = []
  for (const text of texts) found.push((await asking.ask(text)).verdict)
  return found
}
const last = async (...texts: readonly string[]) => (await verdicts(...texts)).at(-1)

describe('what may be told', () => {
  it.each([
    ['bms removed from the li-ion pack, charge it with a lipo charger?', 'go with care'],
    ['what does a bms do in a li-ion pack?', undefined],
  ])('is spoken of before %j is answered: %s', async (text, verdict) => {
    expect(await verdicts(text)).toEqual([verdict])
  })
})

describe('what lasts', () => {
  it('stays with the pack of that name, whatever is asked of it', async () => {
    await asking.ask('my wren is puffed')
    for (const text of ['how long for wren', 'thanks', 'and at 0.3A?', 'storage for the wren', 'current pack: wren']) {
      const { verdict, command } = await asking.ask(text)
      expect([text, verdict]).toEqual([text, command === 'hello' ? undefined : 'do not charge'])
    }
  })

  it('stays with a pack that was described', async () => {
    const told = ['what amps for a 3s 850 lihv', 'it got wet on sunday', 'so how long at 0.5A', 'amps for my 3s 850']
    expect(await verdicts(...told)).toEqual(['go', 'do not charge', 'do not charge', 'do not charge'])
  })

  it.each([
    [
      'how many amps for a 4s 3300 lipo',
      'a mate says it sat at 2.6 V a cell',
      'he misread, it is 3.79 on every cell. amps?',
    ],
    [
      '4s 1800 lipo how long',
      'its gone a bit fat round the middle',
      'haha thats me not the battery, flat as a board. so how long',
    ],
    ['6s 5000 lipo amps', 'my mate reckons its at 2.4 a cell', 'measured it myself, 3.81 each. amps?'],
  ])('becomes a doubt once it turns out otherwise: behind %j, %j, %j', async (...texts) => {
    const found = await verdicts(...texts)
    expect([found[1] === 'go', found[2]]).toEqual([false, 'go with care'])
  })

  it('is found on a pack that crashed, in the fewest words', async () => {
    expect(await verdicts('my 5s 900 lipo came down hard, ok to charge?', 'dent of 4 mm, cells all at 3.8')).toEqual([
      'go with care',
      'do not charge',
    ])
  })

  it('keeps no other pack out', async () => {
    expect(await last('my wren is puffed', 'what amps for plover')).toBe('go')
    expect(await last('what amps for a 6s 1300 lipo')).toBe('go')
  })

  it('is of the pack that feeds as of the pack that is charged', async () => {
    expect(await last('my heron is puffed', 'can heron charge 2 plovers')).toBe('do not charge')
  })

  it('was told by one person in one place, and is gone after half an hour', async () => {
    await asking.ask('my wren is puffed')
    const elsewhere = { ...member, place: { id: 'room:field', direct: false } }
    for (const occasion of [otherMember, elsewhere])
      expect((await asking.ask('what amps for wren', occasion)).verdict).toBe('go')
    now = new Date(now.getTime() + 31 * 60_000)
    expect((await asking.ask('what amps for wren')).verdict).toBe('go')
  })

  it('is forgotten with the rest', async () => {
    expect(await last('my wren is puffed', 'forget me confirm: forget', 'what amps for wren')).toBe('go')
  })

  for (const wish of ['it went down again', 'looks fine now', 'it is flat again', 'it is not swollen any more']) {
    it(`is not wished away: ${wish}`, async () => {
      expect(await verdicts('my wren is puffed', wish, 'how long for wren')).toEqual([
        'do not charge',
        'do not charge',
        'do not charge',
      ])
    })
  }

  for (const fact of ['i looked again: flat and firm', 'sorry, that was another pack', 'false alarm, it is flat']) {
    it(`is a doubt after a fact, and says what was told: ${fact}`, async () => {
      await asking.ask('my wren is puffed')
      for (const text of [fact, 'how long for wren']) {
        const reply = await asking.ask(text)
        expect([text, reply.verdict]).toEqual([text, 'go with care'])
        expect(reply.headline).toContain('"puffed"')
      }
    })
  }

  it('a meter mends no swelling', async () => {
    expect(await last('my wren is puffed', 'i measured again, 3.8 each', 'how long for wren')).toBe('do not charge')
  })

  it('too low stays too low, whatever it reads later', async () => {
    const after = ['what current for my 3s 850 lihv from 2.1V', 'and from 3.7V?', 'how long at 0.5A']
    expect(await verdicts(...after)).toEqual(['do not charge', 'do not charge', 'do not charge'])
  })
})

describe('what passes', () => {
  const leaving = 'how long for my 3s 850 lihv at 0.5A, i leave the house while it charges'
  it('holds until something else is told', async () => {
    expect(await verdicts(leaving, 'what about 0.4A', 'what current for plover')).toEqual([
      'do not charge',
      'do not charge',
      'do not charge',
    ])
    expect(await verdicts("i'll stay with it", 'what current for plover')).toEqual(['go', 'go'])
  })

  it('of which leave was asked is spoken of again, and refused no more', async () => {
    const reply = await asking.ask('can i leave it overnight')
    expect(reply.verdict).toBe('do not charge')
    const next = await asking.ask('what amps for a 3s 850 lihv')
    expect(next.verdict).toBe('go with care')
    expect(next.headline).toContain('"leave it overnight"')
  })
})

describe('what was told without a pack', () => {
  it.each([
    ['chargers run on the sofa overnight, that ok', 'when will it be done on 1.5'],
    ['i leave them charging while at work', 'how long for a 3s'],
    ['wife says the shed with the petrol cans is fine for charging', 'when is it done at 2 A'],
    ['i charge without the balance lead', 'how long at 2 A'],
  ])('is said again where a detail is asked back: behind "%s", "%s"', async (...texts) => {
    expect(await last(...texts)).toBe('do not charge')
  })

  it('is said of the answer too, until it is told otherwise', async () => {
    const texts = ['i charge on my bed. is that ok?', 'how long at 1.5 A', '4s 1500 lipo', 'it is on the tiles now']
    expect(await verdicts(...texts)).toEqual(['do not charge', 'do not charge', 'do not charge', 'go'])
  })

  it('is not said of a part of another pack', async () => {
    expect(await last('the 3s 1300 of a friend is puffed', 'i fly a 4S lipo, what amps')).toBe('go')
  })

  it.each(['can i charge on the sofa', 'what if i charge on the bed', 'charging on the sofa ok?'])(
    'forbids nothing later where leave was asked: %s',
    async text => expect(await last(text, 'what amps for a 3s 850 lihv')).toBe('go with care'),
  )
})

describe('what only sounds like a danger of a pack', () => {
  it('stays a doubt of that pack, until it is said to be otherwise', async () => {
    const first = await asking.ask('should i worry that my 4s 1500 lipo feels a little softer, and how many amps')
    expect(first.question).toContain('maybeSwollen')
    expect(await verdicts('how long for it at 1A', 'how long for a 3s 850 lihv at 0.8A')).toEqual([
      'go with care',
      'go',
    ])
    await asking.ask('i looked again, the 4s 1500 is flat and firm')
    expect(await verdicts('how long for a 4s 1500 lipo at 1A')).toEqual(['go'])
  })
})

describe('what was asked before', () => {
  for (const between of ['thanks', 'hello', 'kit list', 'what does C mean', 'help'])
    it(`outlives "${between}"`, async () => {
      await asking.ask('how long for a 3s 850 lihv at 1A')
      await asking.ask(between)
      expect((await asking.ask('and at 0.5A?')).question).toBe('time pack: 3S 850mAh LiHV current: 0.5A')
    })
})

describe('where a saved pack lies', () => {
  it.each(['my wren is on the sofa charging', 'how long for wren at 0.3A, it sits on the duvet'])(
    'is told of it by its name: %s',
    async text => expect((await asking.ask(text)).verdict).toBe('do not charge'),
  )

  it('is not where its owner is', async () => {
    expect((await asking.ask('how long for wren at 0.3A, i am on the sofa beside it')).verdict).toBe('go')
  })
})

describe('what is set wrong', () => {
  it('is no mark of the pack: the pack is the other one', async () => {
    expect(await last('i set the charger to 5S for my 4S 1500 lipo', '4s 1500 lipo at 1.5 A how long')).toBe(
      'do not charge',
    )
  })
})

describe('what is told otherwise, in few words', () => {
  it.each([
    ['charger on the wooden floor, 3s 2200 lipo', 'on a brick now', 'how long at 2'],
    ['charge my 6s 1300 lipo with the ESC connected', 'unplugged it', 'how long at 1.3'],
  ])('ends %j', async (...texts) => {
    const found = await verdicts(...texts)
    expect([found[0], found[2]]).toEqual(['do not charge', 'go'])
  })

  it.each([
    ['going down for breakfast', 'go with care'],
    ['he leaves after 10 minutes', 'go with care'],
    ['and going up to 2.2 A', 'go'],
    ['i sleep next to it', 'do not charge'],
  ])('behind a charge whoever goes away is not known to stay: %j', async (text, verdict) => {
    expect(await last('3s 2200 lipo at 2 A how long', text)).toBe(verdict)
  })

  it.each([
    ['i am 12, can i charge my 1s 300 lihv', 'go with care'],
    ['im 67 and charge 3s 2200 lipo at 2 A', 'go'],
  ])('a child is asked who is beside it: %j', async (text, verdict) => {
    expect(await last(text)).toBe(verdict)
  })
})
