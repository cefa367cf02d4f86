// House rules in use: set by moderators only, never looser than the chemistry, told where they bind.

import fc from 'fast-check'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { linesOf } from '../../../src/assistant/layers/short.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import { chemistries } from '../../../src/charging/things/chemistries.ts'
import { type Asking, askingOf, member, moderator } from '../../support/ask.ts'
import { cases, partOf } from '../../support/cases.ts'
import { commandNamed } from '../../support/commands.ts'
import { endFaultless } from '../../support/end-faultless.ts'

const current = commandNamed('current')
const time = commandNamed('time')
const houseSet = commandNamed('house set')
const houseShow = commandNamed('house show')
const source = commandNamed('source')

let asking: Asking
beforeEach(async () => {
  asking = await askingOf([current, time, source, houseSet, houseShow])
})
afterEach(() => endFaultless(asking))

const rules = () => asking.memory.house.rules(member.community.id)

async function done(question: string, by: Occasion = moderator) {
  const reply = await asking.ask(question, by)
  expect(reply.problem).toBeUndefined()
  return reply
}

const figureOf = (reply: Awaited<ReturnType<typeof done>>, key: string) =>
  reply.figures.find(figure => figure.key === key)?.value

describe('what a club tells of itself', () => {
  const linesAbout = async (words: string) => linesOf(await asking.ask(words, member)).join('\n')
  const puffed = 'my 3S 720 LiHV is puffed, what now'
  const facts = [
    ['emergency: 555 0199', 'my pack is on fire', 'Call 555 0199.'],
    ['address: Field lane 3, Newtown', 'my pack is on fire', 'Our field: Field lane 3, Newtown.'],
    ['collection: Steel box at the gate', puffed, 'hands batteries in here: Steel box at the gate.'],
    ['quiet: 22:00 to 07:00', puffed, 'Nobody takes one in during the quiet hours, 22:00 to 07:00.'],
  ] as const

  test.each(facts)('%s is kept, shown where it is needed, and gone when it is lifted', async (fact, words, shown) => {
    await done(`house set ${fact}`)
    expect(await linesAbout(words)).toContain(shown)
    await asking.ask(`house set ${fact.split(':')[0]}: none`, moderator)
    await asking.ask('yes', moderator)
    expect(await linesAbout(words)).not.toContain(shown)
  })
})

describe('what may be charged here', () => {
  test('is nothing colder than the club says', async () => {
    await done('no charging below 10 °C in our club, set that as a rule')
    const cold = await done('current pack: 3S 720 LiHV temperature: 8°C')
    expect(cold.verdict).toBe('do not charge')
    expect(cold.headline).toContain('no cells colder than 10')
    expect((await done('current pack: 3S 720 LiHV temperature: 11°C')).verdict).not.toBe('do not charge')
    expect((await asking.ask('house set coldest: -1°C', moderator)).problem?.what).toMatch(/coldest cells/)
  })

  test('is nothing fuller than the club says', async () => {
    await done('house set chemistry: LiPo full: 4.15V')
    expect(figureOf(await done('current pack: 3S 720 LiPo'), 'cutoffPack')).toBeCloseTo(12.45)
    expect(figureOf(await done('current pack: 3S 720 LiHV'), 'cutoffPack')).toBeCloseTo(13.05)
    expect((await asking.ask('house set chemistry: LiPo full: 4.3V', moderator)).problem?.what).toMatch(/4.30/)
  })
})

describe('a rate for all', () => {
  test('leaves those as they are that may not have as much anyway', async () => {
    const reply = await done('house set rate: 1.5C')
    expect(reply.headline).toContain('LiPo, LiHV, LiFe: highest charge rate 1.5C')
    expect((await rules()).maxRate_C).toEqual({ LiPo: 1.5, LiHV: 1.5, LiFe: 1.5 })
    expect((await asking.ask('house set rate: 4C', moderator)).problem?.what).toMatch(/LiPo to 4C/)
  })
})

describe('a rule that is set', () => {
  test('binds the advice from then on, says so, and is lifted again', async () => {
    const question = 'current pack: 2S 1000mAh LiPo 2C charger: 0.5/1/2A'
    expect(figureOf(await done(question), 'setCurrent')).toBe(2)
    const reply = await done('house set chemistry: LiPo rate: 0.5C')
    expect(reply.headline).toBe(
      'Set for this club: LiPo: highest charge rate 0.5C. Before: LiPo: highest charge rate not set.',
    )
    const bound = await done(question, member)
    expect(figureOf(bound, 'setCurrent')).toBe(0.5)
    expect(JSON.stringify([bound.headline, bound.working])).toContain('rules of this club')
    await done('house set chemistry: LiPo rate: none')
    expect(figureOf(await done(question), 'setCurrent')).toBe(2)
  })

  test('is one community’s alone', async () => {
    await done('house set chemistry: LiPo rate: 0.5C')
    const elsewhere = { ...member, community: { id: 'room:other', name: 'Other' } }
    expect(figureOf(await done('current pack: 2S 1000 LiPo 2C', elsewhere), 'setCurrent')).toBe(2)
  })

  test('changes how numbers are written', async () => {
    await done('house set decimal: comma')
    const reply = await done('current pack: 2S 450 LiPo', member)
    expect(reply.figures.find(figure => figure.key === 'cutoffPerCell')?.text).toMatch(/^4,20/)
  })

  test('gentle Li-ion lowers the cutoff', async () => {
    await done('house set gentle: yes')
    expect(figureOf(await done('current pack: 2S 2600 Li-ion'), 'cutoffPerCell')).toBe(4.1)
    await done('house set gentle: no')
    expect(figureOf(await done('current pack: 2S 2600 Li-ion'), 'cutoffPerCell')).toBe(4.2)
  })

  test('once says after how long its chargers end, which an end that is told stands for', async () => {
    await done('house set ends: 45min')
    expect((await done('house show')).working.join()).toContain('end of a charge: 45 min by their clocks')
    const plain = 'time pack: 3S 1500 LiPo current: 1A from: 10%'
    const reply = await done(plain)
    expect(reply.headline).toMatch(/^Its clock ends it after 45 min: about 750 mAh goes in/)
    expect(figureOf(reply, 'chargeTime')).toBeCloseTo(2700, 6)
    expect((await done('current pack: 3S 1500 LiPo from: 10%')).headline).toContain('Its clock ends it after 45 min')
    for (const until of ['a tenth', '0.1A', '2h'])
      expect(figureOf(await done(`${plain} until: ${until}`), 'chargeTime')).toBeGreaterThan(3600)
    expect((await asking.ask('house set ends: 5 parsecs', moderator)).problem?.token).toBe('5 parsecs')
  })

  test.each([
    ['our chargers end at C/20', 'C/20'],
    ['set the chargers of this club to end at a twentieth', 'twentieth'],
    ['from now on our chargers here stop by their timer after 90 min, set that for the club', 5400],
  ])('hears where its chargers end, and takes that for no limit: %s', async (words, chargeEnd) => {
    await asking.ask(words, moderator)
    await asking.ask('yes', moderator)
    expect(await rules()).toEqual({ chargeEnd })
  })

  test('sets nothing where that is asked, or told with a pack', async () => {
    expect((await asking.ask('do our chargers end at C/20?', moderator)).command).not.toBe('house set')
    const reply = await asking.ask('our chargers end at C/20, how long does a 3S 1300 LiPo take at 1A', moderator)
    expect(reply.question).toBe('time pack: 3S 1300mAh LiPo current: 1A until: 0.065A')
  })

  test('about private answers lets moderators have them still', async () => {
    expect(await asking.assistant.mayAskPrivately(member)).toBe(true)
    await done('house set private-answers: moderators')
    expect(await asking.assistant.mayAskPrivately(member)).toBe(false)
    expect(await asking.assistant.mayAskPrivately(moderator)).toBe(true)
  })

  test('for no chemistry in particular is for all of them where it is a rate', async () => {
    await done('house set rate: 0.5C')
    expect((await rules()).maxRate_C).toEqual({ LiPo: 0.5, LiHV: 0.5, 'Li-ion': 0.5, LiFe: 0.5 })
  })
})

test('several rules go in one question, all or none', async () => {
  await done('house set chemistry: LiPo rate: 1C storage: 3.80V floor: 3.5V gentle: yes')
  expect(await rules()).toEqual({
    maxRate_C: { LiPo: 1 },
    storagePerCell_V: { LiPo: 3.8 },
    sourceFloorPerCell_V: { LiPo: 3.5 },
    gentleLiIon: true,
  })
  await asking.ask('house set chemistry: LiFe rate: 1C storage: 3.9V', moderator)
  expect((await rules()).maxRate_C).toEqual({ LiPo: 1 })
})

describe('a reply that a rule bound says so', () => {
  beforeEach(async () => {
    await done('house set chemistry: LiPo rate: 0.5C storage: 3.80V floor: 3.6V gentle: yes')
  })

  test.each([
    ['current pack: 2S 1000mAh LiPo', 'the rules of this club'],
    ['time pack: 2S 1000mAh LiPo', 'the rules of this club'],
    ['current pack: 2S 1000mAh LiPo to: storage', 'Storage is 3.80 V a cell by the rules of this club.'],
    ['current pack: 2S 2600mAh Li-ion', 'Full is 4.10 V a cell for Li-ion by the rules of this club.'],
    ['current pack: 2S 2600mAh Li-ion to: 4.15V per cell', 'Full is 4.10 V a cell'],
    ['time pack: 2S 2600mAh Li-ion to: 80%', 'Full is 4.10 V a cell'],
    ['source source: 4S 5000mAh LiPo pack: 2S 450mAh LiHV', 'The source is stopped at 3.60 V a cell'],
    ['current pack: 2S 450mAh LiHV source: 4S 5000mAh LiPo', 'The source is stopped at 3.60 V a cell'],
  ])('%s', async (question, words) => {
    const { headline, working, assumed } = await done(question, member)
    expect([headline, ...working, ...assumed].join('\n')).toContain(words)
  })

  test.each([
    'current pack: 2S 450mAh LiHV',
    'current pack: 2S 450mAh LiHV to: storage',
    'current pack: 2S 2600mAh Li-ion to: 4.05V per cell',
    'source source: PD 65W pack: 2S 450mAh LiHV',
  ])('and one that none bound does not: %s', async question => {
    const { headline, working, assumed } = await done(question, member)
    expect([headline, ...working, ...assumed].join('\n')).not.toMatch(/rules of this (house|club)/)
  })
})

describe('never looser than the chemistry', () => {
  test('the reply names the limit, where it comes from, and what would do', async () => {
    const { problem } = await asking.ask('house set chemistry: LiPo rate: 3C', moderator)
    expect(problem).toMatchObject({
      what: 'A club cannot set the highest charge rate of LiPo to 3C.',
      token: '3C',
      example: 'house set chemistry: LiPo rate: 2C',
    })
    expect(problem?.expected).toContain('2C is the limit')
    await done(problem?.example ?? '')
  })

  test.each(['rate: 3C', 'storage: 3.9V', 'floor: 3.3V', 'storage: 4.2V', 'rate: 0.01C'])('%s', async asked => {
    expect((await asking.ask(`house set chemistry: LiPo ${asked}`, moderator)).problem).toBeDefined()
    expect(await rules()).toEqual({})
  })

  test('whatever is asked, what is kept is within the chemistry', { timeout: 60_000 }, async () => {
    const limit = fc.oneof(
      fc.integer({ min: 1, max: 2000 }).map(value => `rate: ${value / 100}C`),
      fc.integer({ min: 0, max: 500 }).map(value => `storage: ${value / 100}V`),
      fc.integer({ min: 0, max: 500 }).map(value => `floor: ${value / 100}V`),
    )
    let kept = 0
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...chemistries), limit, async (chemistry, asked) => {
        const { name } = chemistry
        const reply = await asking.ask(`house set chemistry: ${name} ${asked}`, moderator)
        if (!reply.problem) kept += 1
        const { maxRate_C, storagePerCell_V, sourceFloorPerCell_V } = await rules()
        const { highestRate_C, storage_V, restFloor_V, loadFloor_V } = chemistry
        expect(maxRate_C?.[name] ?? 0).toBeLessThanOrEqual(highestRate_C.value)
        expect(storagePerCell_V?.[name] ?? storage_V.value).toBeLessThanOrEqual(storage_V.value)
        expect(storagePerCell_V?.[name] ?? storage_V.value).toBeGreaterThanOrEqual(restFloor_V.value)
        expect(sourceFloorPerCell_V?.[name] ?? loadFloor_V.value).toBeGreaterThanOrEqual(loadFloor_V.value)
      }),
      cases(500),
    )
    expect(kept).toBeGreaterThan(partOf(20))
  })
})

describe('who may set rules', () => {
  test.each(houseSet.examples)('a member may not: %s', async question => {
    const { problem } = await asking.ask(question, member)
    expect(problem?.what).toBe('Only moderators change the rules of this club.')
    expect(await rules()).toEqual({})
  })

  test('of two moderators at once neither undoes what the other alone has set', async () => {
    const other = { ...moderator, asker: { ...moderator.asker, id: 'room:paul' } }
    await Promise.all([
      done('house set chemistry: LiPo rate: 1C decimal: comma'),
      done('house set chemistry: LiFe rate: 1C gentle: yes', other),
    ])
    expect(await rules()).toEqual({ maxRate_C: { LiPo: 1, LiFe: 1 }, gentleLiIon: true, decimalMark: ',' })
  })
})

test.each([
  ['house set', 'I need to know which rule to set.'],
  ['house set chemistry: LiPo', 'I need to know which rule to set.'],
  ['house set storage: 3.8V', 'I need to know which cells the storage voltage is for.'],
  ['house set language: Deutsch', 'So far I answer in English only.'],
])('%s: what is missing or not to be had is said', async (question, what) => {
  expect((await asking.ask(question, moderator)).problem?.what).toBe(what)
})

test('anyone may see the rules, the chemistry’s limit where the club has none', async () => {
  await done('house set chemistry: LiPo rate: 1C')
  const reply = await done('house show', member)
  const text = (key: string) => reply.figures.find(figure => figure.key === key)?.text
  expect(text('highestRateLiPo')).toBe('1C (this club)')
  expect(text('highestRateLiHV')).toBe('2C (of the type)')
  expect(reply.figures).toHaveLength(16)
  expect(reply.working.join('\n')).toContain('private answers: everyone')
})
