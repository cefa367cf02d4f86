// How somebody is answered who writes as people write: what is kept, what is asked back, what is refused.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Reply } from '../../../src/assistant/reply.ts'
import { type Asking, askingOf, member, otherMember } from '../../support/ask.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
let now = new Date('2031-05-03T10:00:00Z')

beforeEach(async () => {
  now = new Date('2031-05-03T10:00:00Z')
  asking = await askingOf(commands, { clock: () => now })
})
afterEach(() => endFaultless(asking))

const later = (minutes: number): void => {
  now = new Date(now.getTime() + minutes * 60_000)
}
const spaced = (text: string): string => text.replaceAll(/\s/g, ' ')
const setCurrent = ({ figures }: Reply): number | undefined => figures.find(({ key }) => key === 'setCurrent')?.value

describe('packs of several kinds', () => {
  it('stand under one doubt, and each gets its setting', async () => {
    const { headline } = await asking.ask('amps for a 2S 700 and a 5S 900')
    expect(spaced(headline)).toMatch(/^With LiPo, as most are \(the volts printed on a pack tell\): Both packs/)
    expect(spaced(headline)).toMatch(/2S 700mAh LiPo[^,.]* at 0\.7 A/)
    expect(spaced(headline)).toMatch(/5S 900mAh LiPo[^,.]* at 0\.9 A/)
  })
})

describe('values and nothing else', () => {
  it.each(['1C', '14V', '25 min', '2A'])('say nothing of what is wanted: %s', async text => {
    const { command, problem, followUps } = await asking.ask(text)
    expect([command, problem?.what]).toEqual(['', expect.stringContaining('did not get what you want to know')])
    expect(followUps.length).toBeGreaterThan(1)
  })

  it('are a pack of which the setting is the first thing to know', async () => {
    expect((await asking.ask('5S')).problem?.what).toMatch(/How many mAh/)
    expect((await asking.ask('5S 900 lipo')).question).toBe('current pack: 5S 900mAh LiPo')
  })
})

describe('a short answer to what was asked before', () => {
  it('changes the pack and keeps the type', async () => {
    await asking.ask('what amps for a 3s 850 lihv')
    const reply = await asking.ask('and 6s 1300?')
    expect(reply.readAs).toContain('6S 1300mAh LiHV')
    expect(setCurrent(reply)).toBeCloseTo(1.3, 9)
  })

  it('changes one detail of the same pack', async () => {
    await asking.ask('how long for a 3s 850 lihv at 1A')
    expect((await asking.ask('at 0.5A')).question).toBe('time pack: 3S 850mAh LiHV current: 0.5A')
  })

  it('asks whether low volts are those of a cell or of the pack, and takes a number or the words', async () => {
    const where = async (text: string, answer: string) => {
      const { problem, followUps } = await asking.ask(text)
      expect([text, problem?.what]).toEqual([text, expect.stringContaining('one cell, or the whole pack?')])
      return asking.ask(followUps.find(({ label }) => label === answer)?.question ?? answer)
    }
    expect((await where('2s 450 3.2V', 'one cell')).question).toContain('told: chemistryAssumed')
    expect((await where('how full is a 2s 450 lipo at 3.2V', '1')).question).toBe(
      'percent pack: 2S 450mAh LiPo at: 3.2V per cell',
    )
    expect((await where('2s 450 lipo 3.2V', 'the whole pack')).verdict).toBe('do not charge')
    expect((await where('2s 450 lipo 3.2V', '3')).readAs).toContain('Voltage sag')
    expect((await where('2s 450 lipo 3.2V', 'not sure')).readAs).toContain('Measuring each cell')
    expect((await asking.ask('2s 450 lipo 3.7V')).problem).toBeUndefined()
    expect((await asking.ask('2s 450 lipo at 3.2V a cell')).problem).toBeUndefined()
  })

  it('keeps what was only assumed through a choice', async () => {
    await asking.ask('kit save name: brick source: PD 65W')
    const { followUps, problem } = await asking.ask('how many 4s 1500 can i charge')
    expect(problem?.what).toContain('one thing more')
    const [first] = followUps
    expect((await asking.ask(first?.question ?? '')).verdict).toBe('go with care')
    await asking.ask('how many 4s 1500 can i charge')
    expect((await asking.ask('1')).verdict).toBe('go with care')
  })

  it('never makes sure of what was only assumed', async () => {
    await asking.ask('what amps for a 4s 1500')
    for (const text of ['and 6s 1300?', 'how long at 1A from 3.7V']) {
      const reply = await asking.ask(text)
      expect([text, reply.verdict]).toEqual([text, 'go with care'])
      expect(reply.headline).toMatch(/^If it is LiPo \(/)
    }
    expect((await asking.ask('it is a lihv')).headline).not.toMatch(/^If it is/)
  })

  it('belongs to one person in one place', async () => {
    await asking.ask('what amps for a 3s 850 lihv')
    const elsewhere = { ...member, place: { id: 'room:field', direct: false } }
    for (const occasion of [otherMember, elsewhere]) {
      expect((await asking.ask('and 6s 1300?', occasion)).readAs).not.toContain('LiHV')
    }
  })

  it('is none after half an hour', async () => {
    await asking.ask('what amps for a 3s 850 lihv')
    later(29)
    expect((await asking.ask('and 6s 1300?')).readAs).toContain('LiHV')
    later(31)
    expect((await asking.ask('and 4s 1500?')).readAs).not.toContain('LiHV')
  })

  it('is none for who asked to be forgotten', async () => {
    await asking.ask('what amps for a 3s 850 lihv')
    await asking.ask('forget me confirm: forget')
    expect((await asking.ask('and 6s 1300?')).readAs).not.toContain('LiHV')
  })
})

it('takes a rate beside the volts of cells for no balance current', async () => {
  expect((await asking.ask('4s rested 3.96 3.97 3.71 3.96, put it on at 1C?')).headline).toMatch(/0\.26 V apart/)
})

it('takes the places of a board for so many packs of the one that is named', async () => {
  const reply = await asking.ask('which charger for a board for 5 packs, all 6s 1300 lipo')
  expect(reply.readAs).toContain('5x 6S 1300mAh LiPo')
})

describe('what is missing', () => {
  it('is asked for once, with choices that a number picks', async () => {
    const asked = await asking.ask('what current for my 4s lihv')
    expect(asked.problem?.what).toContain('How many mAh has the 4S LiHV?')
    const second = /2 (\d+)mAh/.exec(spaced(asked.problem?.expected ?? ''))?.[1]
    const reply = await asking.ask('2')
    expect(reply.readAs).toContain(`4S ${second}mAh LiHV`)
  })

  it('may be told in the asker’s own words', async () => {
    await asking.ask('what current for my 4s lihv')
    expect(setCurrent(await asking.ask('2200'))).toBeCloseTo(2.2, 9)
  })

  it('is the type alone: the answer is given for the commonest, with the others beside it', async () => {
    const reply = await asking.ask('what amps for a 4s 1500')
    expect(reply.verdict).toBe('go with care')
    expect(reply.headline).toMatch(/^If it is LiPo \(/)
    expect(spaced(reply.headline)).toContain('15.2 V printed: LiHV, 1.5 A, 17.4 V')
    expect(reply.assumed.join(' ')).toContain('no type was said')
  })
})

describe('words between a command and its details', () => {
  it('are said to change nothing where they are left over, and only there', async () => {
    expect((await asking.ask('current 3S 720 LiHV charger: 1/2A')).assumed).toEqual([])
    const [left] = (await asking.ask('current 3S 720 LiHV 12kg charger: 1/2A')).assumed
    expect(left).toMatch(/^this changes nothing: ".+"$/)
  })
})

describe('a value that nobody can mean', () => {
  it.each([
    ['charge 4S 1500 lipo at 5000 A', '5000A'],
    ['how long for 3S 2200 at 0 A', '0A'],
    ['charge 4S 1500 lipo at 300 degrees', '300°C'],
    ['charge 4S 1500 lipo from 150 %', '150%'],
    ['charge 4S 900000 mAh lipo', '900000mAh'],
    ['current 3S 99999999 lipo', '99999999'],
    ['charge a 500S 1300 lipo', '500S'],
  ])('%s is pointed at, not passed over', async (question, token) => {
    const { problem, verdict } = await asking.ask(question)
    expect(problem?.token?.replace(' ', '')).toBe(token)
    expect(problem?.expected).toBeDefined()
    expect(verdict).toBeUndefined()
  })
})

describe('what is not a question about a setting', () => {
  it('has its questions picked by their number, once', async () => {
    const { followUps } = await asking.ask('flibber')
    const { question, problem } = await asking.ask('2')
    expect(problem).toBeUndefined()
    expect(question).toBe((await asking.ask(followUps[1]?.question ?? '')).question)
    expect((await asking.ask('2')).question).not.toBe(question)
    const mended = await asking.ask('current pack: 99S 720 LiHV')
    expect((await asking.ask('1')).question).toBe('current pack: 3S 720mAh LiHV')
    expect(mended.followUps).toHaveLength(1)
  })

  it.each(['', '   ', '👍', 'flibber', 'qwxz plorb'])('%j gets questions to choose from', async text => {
    const { problem } = await asking.ask(text)
    expect(problem?.example).toBe('what current for a 4S 1500 LiPo')
  })

  it('goes to the handbook where it is about what and why', async () => {
    const reply = await asking.ask('why is the last bit so slow')
    expect(reply.command).toBe('handbook')
    expect(reply.problem).toBeUndefined()
  })

  it.each([
    ['a good charger for a newcomer to buy?', 'Choosing a first charger'],
    ['the screen of the charger has a number that counts up', "What the charger's screen shows"],
    ['my lipo came new from the shop and only half full, ok?', 'A new pack is half full'],
    ['dual charger, what is that', 'Chargers with two or more outputs'],
    ['sag, what is it', 'Voltage sag'],
    ['two 12 V supplies in series to get 24 V, may I do that?', 'Two supplies in series'],
  ])('goes to the handbook where that surely knows it, whatever else it sounds like: %j', async (text, title) => {
    expect((await asking.ask(text)).readAs).toBe(`"${title}"`)
  })

  it('is answered from the handbook where the cells are of a kind that no setting here fits', async () => {
    for (const text of ['what amps for a 6 cell 2000 nimh', 'charge current for my 8 cell nicd 1700']) {
      const reply = await asking.ask(text)
      expect([reply.command, setCurrent(reply)], text).toEqual(['handbook', undefined])
    }
  })
})

describe('a figure that is asked beside words', () => {
  it.each([
    ['What is meant by 1C, and what does that come to for a 4S 2600 lipo?', 'current', /2\.6 A.*read as amps/s],
    ['What do the 60 watts on a charger mean for a 5S 4000 lipo?', 'current', /2\.8 A.*Watts are/s],
    ['why does storage age them less, and what is it in volts for a 5S lihv', 'storage', /19\.25 V.*LiPo and LiHV/s],
    ['Why are they stored half full? And what does a half full 5S lihv read', 'percent', /for 5S.*half full/s],
  ])('is the answer, and they are a line of it: %s', async (text, command, says) => {
    const reply = await asking.ask(text)
    expect([reply.command, spaced(reply.headline)]).toEqual([command, expect.stringMatching(says)])
  })

  it.each([
    'what does 35C on my 4s 1300 mean',
    'why does the last bit take so long on a 3s 2200',
    'my 3s 1300 is warm after charging, why is that',
    'is it bad to charge halfway and fly a 3s 1300',
  ])('is none where a pack is only told: %s', async text => {
    expect((await asking.ask(text)).command).toBe('handbook')
  })

  it('makes nothing milder where leave is asked for a danger', async () => {
    const text = 'may I charge it over night when nobody is awake, and how many amps for a 3S 1300 lipo'
    expect((await asking.ask(text)).verdict).toBe('do not charge')
  })
})

describe('a danger that is told beside the question', () => {
  it.each([
    ['what amps for my puffed 4s 1500 lipo', /swollen|puffed/i],
    ['my 3s 850 lihv has a dent in one cell, can i charge at 1A', /dent|hurt|pierced/i],
    ['how long for a 4s 1500 lipo at 1A, i go to sleep meanwhile', /alone|asleep/i],
  ])('%s: refused by name, whatever the numbers say', async (text, words) => {
    const reply = await asking.ask(text)
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toMatch(words)
    expect(setCurrent(reply)).toBeUndefined()
  })

  it('is answered first where it burns, and without any memory', async () => {
    await asking.memory.close()
    const reply = await asking.ask('my pack is on fire, what current')
    expect(reply.headline).toMatch(/call the fire service/)
    expect(reply.cautions.map(({ key }) => key)).not.toContain('stayWithIt')
    asking = await askingOf(commands)
  })

  it('is none in the text of an answer that a moderator keeps', async () => {
    const moderator = { ...member, asker: { ...member.asker, moderates: true } }
    const reply = await asking.ask('answer save title: fire text: if a pack is on fire, go out and call', moderator)
    expect(reply.headline).toContain('is saved')
  })
})

describe('what a sentence tells by its values', () => {
  it.each([
    [
      'drain a 6S 4000 lipo from full down to storage at 1 A: hours?',
      'storage pack: 6S 4000mAh LiPo from: full discharge: 1A',
    ],
    [
      'charge a 6S 4000 lipo from storage to full at 4 A, how long',
      'time pack: 6S 4000mAh LiPo current: 4A from: storage to: full',
    ],
    ['how long for a 3S2P 5000 Li-ion of 21700s at 2.5 A', 'time pack: 3S2P 5000mAh Li-ion current: 2.5A'],
  ])('%s', async (question, meant) => {
    expect((await asking.ask(question)).question?.replace(' told: notUnderstood', '')).toBe(meant)
  })

  it('keeps a rate a rate where the pack changes', async () => {
    await asking.ask('4S 2200 lipo at 1C')
    expect((await asking.ask('and for 5000?')).question).toContain('5000mAh LiPo current: 5A')
  })

  it('says first whether a charger gives what is asked of it', async () => {
    expect((await asking.ask('can a 60 W charger give 2 A into a 6S lipo')).headline).toMatch(/^Yes: 50.W/)
    expect((await asking.ask('can a 50 W charger give 4 A into a 4S lipo')).headline).toMatch(/^No: /)
  })
})
