import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import type { Reply } from '../../../src/assistant/reply.ts'
import { someChemistry } from '../../support/arbitraries.ts'
import { type Asking, askingOf, moderator } from '../../support/ask.ts'
import { cases, partOf } from '../../support/cases.ts'
import { commandNamed } from '../../support/commands.ts'

const travel = commandNamed('travel')
const trim = commandNamed('trim')
const compare = commandNamed('compare')
const percent = commandNamed('percent')
const houseSet = commandNamed('house set')
const lead = commandNamed('lead')
const supply = commandNamed('supply')

const commands = [lead, travel, compare, percent, trim, supply]

let asking: Asking
beforeAll(async () => {
  asking = await askingOf(commands)
})

async function answered(question: string): Promise<Reply> {
  const reply = await asking.ask(question)
  expect(asking.faults).toEqual([])
  expect(reply.problem).toBeUndefined()
  expect(reply.cautions.length).toBeGreaterThan(0)
  expect(reply.deference).not.toBe('')
  return reply
}

const figure = (reply: Reply, key: string) => reply.figures.find(one => one.key === key)

describe('lead', () => {
  it('tells drop, heat and what the charger sees', async () => {
    const reply = await answered('lead gauge: AWG 16 length: 1m current: 10A voltage: 12V')
    expect(figure(reply, 'resistance')?.value).toBeCloseTo(0.02635, 5)
    expect(figure(reply, 'drop')).toMatchObject({ unit: 'V' })
    expect(figure(reply, 'chargerSees')?.value).toBeCloseTo(12 - (figure(reply, 'drop')?.high ?? 0), 9)
  })

  it('refuses a wire that would grow hot, and names one that will do', async () => {
    const reply = await answered('lead gauge: AWG 24 length: 30cm current: 10A')
    expect(reply.headline).toMatch(/^Do not run 10.A through AWG 24: .*Use AWG 21 or thicker/)
  })

  it('never chooses by drop alone: a short thin lead may drop little and still burn', async () => {
    const reply = await answered('lead length: 5cm current: 30A drop: 1V')
    expect(figure(reply, 'gauge')?.value).toBeLessThanOrEqual(12)
  })

  it('asks for what it lacks', async () => {
    expect((await asking.ask('lead length: 2m')).problem?.what).toContain('current')
    expect((await asking.ask('lead length: 2m current: 8A drop: 3%')).problem?.what).toContain('voltage')
  })

  it('tells what a gauge is and bears where nothing else is said', async () => {
    const reply = await answered('lead gauge: AWG 16')
    expect(reply.headline).toMatch(/1\.31.mm² .* bears about 19.A/)
    expect(reply.assumed.join()).toContain('1m long')
  })

  it('reckons with the input of the charger that it feeds', async () => {
    // 170 W behind 85 % at 10 V.
    const reply = await answered('lead gauge: AWG 10 length: 1m power: 170W voltage: 10V')
    const { value: drop_V = 0 } = figure(reply, 'drop') ?? {}
    const { value: resistance_ohm = 1 } = figure(reply, 'resistance') ?? {}
    expect(drop_V / resistance_ohm).toBeCloseTo(20, 6)
  })

  it('says so where no wire will do', async () => {
    expect((await answered('lead length: 50m current: 60A voltage: 5V')).headline).toContain('No single wire')
  })
})

describe('travel', () => {
  it('sorts packs by the air limits, worst first', async () => {
    const { headline } = await answered('travel packs: 2x 3S 720 LiHV; 4S 8000 Li-ion; 6S 12000 LiPo')
    expect(headline).toMatch(
      /not go with passengers: 6S 12000mAh LiPo .*approval, in the cabin: 4S 8000mAh Li-ion .*In the cabin with you: 3S 720mAh LiHV/,
    )
  })

  it('lets no more than two of the middle class go', async () => {
    expect((await answered('travel packs: 3x 6S 5000 LiPo')).headline).toContain('2 may go: leave the others')
    expect((await answered('travel packs: 2x 6S 5000 LiPo')).headline).not.toContain('leave the others')
  })

  it('always says cabin only, cover the terminals and ask the airline', async () => {
    const carried = (await answered('travel packs: 3S 720 LiHV')).cautions.find(({ key }) => key === 'carried')
    for (const words of [
      'In the cabin only',
      'every plug covered',
      'Ask the airline',
      'damaged or recalled pack does not fly',
    ])
      expect(carried?.text).toContain(words)
  })

  it('refuses a pack by itself that no passenger may carry', async () => {
    expect((await answered('travel packs: 6S 12000 LiPo')).verdict).toBe('do not charge')
  })
})

describe('compare', () => {
  it('tells what an ounce buys', async () => {
    const reply = await answered('compare packs: 3S 720 LiHV 45g; 3S 850 LiPo 68g rate: 2C')
    // By hand: 3 x 3.8 x 0.72 = 8.208 Wh / 45 g; 3 x 3.7 x 0.85 = 9.435 Wh / 68 g; 1.227 Wh in 23 g = 0.811 oz.
    expect(figure(reply, 'energyPerMass1')?.value).toBeCloseTo(182.4, 1)
    expect(figure(reply, 'energyPerMass2')?.value).toBeCloseTo(138.75, 2)
    expect(figure(reply, 'current2')?.value).toBeCloseTo(1.7, 9)
    expect(reply.working.join(' ')).toMatch(/1\.51 Wh an ounce/)
  })

  it('does without masses, and says what they would add', async () => {
    const reply = await answered('compare packs: 3S 720 LiHV; 3S 850 LiPo')
    expect(reply.headline).toContain('With the mass')
    expect(figure(reply, 'mass1')).toBeUndefined()
  })

  it('says that a current at a C-rate is no setting', async () => {
    const reply = await answered('compare packs: 3S 720 LiHV; 3S 850 LiPo rate: 20C')
    expect(reply.headline).toContain('neither what the pack may be charged with nor what it can give')
  })

  it('wants two', async () => {
    expect((await asking.ask('compare packs: 3S 720 LiHV')).problem?.what).toContain('two or more')
  })
})

describe('percent', () => {
  it('reads pack volts and gives charge with its span, and back', async () => {
    const there = await answered('percent pack: 3S 720 LiHV at: 11.55V')
    const soc = figure(there, 'soc')
    expect(soc?.low).toBeLessThan(soc?.value ?? 0)
    expect(soc?.high).toBeGreaterThan(soc?.value ?? 0)
    const back = await answered(`percent pack: 3S 720 LiHV at: ${soc?.value.toFixed(3)}%`)
    expect(figure(back, 'restPerCell')?.value).toBeCloseTo(3.85, 3)
  })

  it('says that the curve of LiFe is flat', async () => {
    expect((await answered('percent chemistry: LiFe at: 3.3V')).headline).toContain('flat')
    expect((await answered('percent chemistry: LiFe at: 50%')).headline).toContain('flat')
  })

  it.each([
    'percent chemistry: LiPo at: 2.3V',
    'percent chemistry: LiPo at: 4.35V',
    'percent chemistry: LiFe at: 4.2V',
  ])('refuses a hurt or mistaken cell: %s', async question => {
    expect((await answered(question)).verdict).toBe('do not charge')
  })

  it.each([
    ['3.87V', 'storage level'],
    ['4.19V', 'That is full'],
    ['3.52V', 'lower than to land with'],
  ])('says what pilots know %s as', async (volts, words) => {
    expect((await answered(`percent chemistry: LiPo at: ${volts}`)).headline).toContain(words)
  })

  it('tells what share went back in, and what was too deep or cannot be', async () => {
    const shallow = await answered('percent pack: 3S 900 LiPo back: 600mAh')
    expect(shallow.verdict).toBe('go')
    expect(figure(shallow, 'usedShare')?.value).toBeCloseTo(66.7, 1)
    const deep = await answered('percent pack: 3S 900 LiPo back: 800mAh')
    expect(deep.verdict).toBe('go with care')
    expect(deep.cautions.map(({ key }) => key)).toContain('usedDeep')
    expect((await answered('percent pack: 3S 900 LiPo back: 1000mAh')).verdict).toBe('do not charge')
    expect((await asking.ask('percent chemistry: LiPo back: 600mAh')).problem?.what).toContain('capacity')
  })

  it('wants a chemistry, as the same volts mean other charges', async () => {
    expect((await asking.ask('percent at: 3.8V')).problem?.what).toContain('type')
  })
})

describe('trim', () => {
  it('sets a charger that charges high lower, and says stop where cells went above full', async () => {
    const reply = await answered('trim chemistry: LiPo shown: 4.20V measured: 4.23V')
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toMatch(/^Do not charge at this setting: .*Set 4\.17.V a cell at most/)
    const inside = await answered('trim chemistry: LiPo shown: 4.17V measured: 4.20V')
    expect(inside.verdict).toBe('go with care')
    expect(figure(inside, 'highestSetting')?.value).toBeCloseTo(4.17, 9)
  })

  it('does not make up for a charger that charges low', async () => {
    const reply = await answered('trim chemistry: LiPo shown: 4.20V measured: 4.16V')
    expect(figure(reply, 'highestSetting')?.value).toBeCloseTo(4.2, 9)
    expect(reply.headline).toContain('less than the charger says')
  })

  it('takes a charger out of use that is far off', async () => {
    const reply = await answered('trim chemistry: LiPo shown: 4.20V measured: 4.35V')
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toContain('Outdoors on stone with the pack')
    expect(reply.cautions[0]?.text).toContain('Do not use this charger')
    const listed = await answered('trim chemistry: LiPo charger: 1A 3.90/4.20V shown: 4.20V measured: 4.35V')
    expect(listed.cautions[0]?.text).toContain('Do not use this charger')
    expect((await answered('trim chemistry: LiPo shown: 4.20V measured: 4.05V')).headline).toMatch(
      /^Do not use this charger/,
    )
  })

  it('chooses the nearest cutoff at or below the wanted one, with the charge that results', async () => {
    const reply = await answered('trim pack: 3S 720 LiHV charger: 1A 4.10/4.20V')
    expect(figure(reply, 'cutoffPerCell')?.value).toBe(4.2)
    expect(figure(reply, 'soc')?.value).toBeGreaterThan(85)
    expect(figure(reply, 'soc')?.value).toBeLessThan(95)
  })

  it('takes one above a gentle wish only within full', async () => {
    const wish = await answered('trim pack: 2S 2600 Li-ion charger: 1A 4.20/4.35V to: 4.10V per cell')
    expect(figure(wish, 'cutoffPerCell')?.value).toBe(4.2)
    const none = await answered('trim pack: 2S 1100 LiFe charger: 1A 4.20/4.35V')
    expect(none.verdict).toBe('do not charge')
  })

  it('counts what the cells get too much when it chooses', async () => {
    const reply = await answered(
      'trim pack: 2S 450 LiPo charger: 1A 4.15/4.20V shown: 4.10V per cell measured: 4.14V per cell',
    )
    expect(figure(reply, 'cutoffPerCell')?.value).toBe(4.15)
  })

  it('says where the house holds it back', async () => {
    const strict = await askingOf([...commands, houseSet])
    expect((await strict.ask('house set chemistry: Li-ion gentle: yes', moderator)).problem).toBeUndefined()
    for (const question of [
      'trim chemistry: Li-ion shown: 4.10V measured: 4.13V',
      'trim chemistry: Li-ion charger: 1A 4.10/4.20V',
    ]) {
      const reply = await strict.ask(question)
      expect(reply.working.join(' ')).toContain('rules of this club')
      const set = figure(reply, 'highestSetting') ?? figure(reply, 'cutoffPerCell')
      expect(set?.value).toBeLessThanOrEqual(4.1)
    }
  })

  it('never chooses a cutoff that takes a cell above full', async () => {
    const volts = fc.integer({ min: 310, max: 450 }).map(hundredths => hundredths / 100)
    const asked = fc.record({
      chemistry: someChemistry,
      cutoffs: fc.uniqueArray(volts, { minLength: 1, maxLength: 4 }),
      to: fc.option(volts),
      error: fc.integer({ min: -90, max: 90 }).map(thousandths => thousandths / 1000),
    })
    let chosen = 0
    await fc.assert(
      fc.asyncProperty(asked, async ({ chemistry, cutoffs, to, error }) => {
        const full_V = chemistry.full_V.value
        const measured = (full_V + error).toFixed(3)
        const reply = await asking.ask(
          `trim chemistry: ${chemistry.name} charger: 1A ${cutoffs.join('/')}V ${to === null ? '' : `to: ${to}V per cell`} shown: ${full_V}V per cell measured: ${measured}V per cell`,
        )
        expect(asking.faults).toEqual([])
        const cutoff_V = figure(reply, 'cutoffPerCell')?.value
        if (cutoff_V === undefined) return
        chosen += 1
        expect(cutoff_V).toBeLessThanOrEqual(full_V + 1e-9)
        expect(cutoff_V + error).toBeLessThanOrEqual(full_V + 1e-6)
      }),
      cases(2000),
    )
    expect(chosen).toBeGreaterThan(partOf(200))
  })

  it('asks for what it lacks', async () => {
    expect((await asking.ask('trim')).problem?.what).toContain('type')
    expect((await asking.ask('trim chemistry: LiPo shown: 4.2V')).problem?.what).toContain('meter')
    expect((await asking.ask('trim shown: 4.2V measured: 4.2V')).problem?.what).toContain('type')
    expect((await asking.ask('trim chemistry: LiPo shown: 20% measured: 4.2V')).problem?.what).toContain('volts')
  })
})

describe('supply', () => {
  const charger = '0.1-10A by 0.1 200W 6S 10-30V'

  it('gives the current for each cell count', async () => {
    const reply = await answered(`supply source: PD 65W charger: ${charger}`)
    // By hand: 65 W x 0.85 = 55.25 W; / 16.8 V = 3.289 A, / 25.2 V = 2.192 A, down to tenths.
    expect(figure(reply, 'current4S')?.value).toBe(3.2)
    expect(figure(reply, 'current6S')?.value).toBe(2.1)
    expect(reply.assumed.join(' ')).toContain('marked for 5 A')
  })

  it('never says a plain go where the type of the cells is only assumed', async () => {
    const asked = `supply source: PD 65W charger: ${charger}`
    const reply = await answered(asked)
    expect(reply.verdict).toBe('go with care')
    expect(
      reply.cautions
        .concat({ key: '', text: reply.headline })
        .map(({ text }) => text)
        .join(' '),
    ).toMatch(/With LiPo, as most are/)
    expect((await answered(`${asked} chemistry: LiFe`)).verdict).toBe('go')
  })

  it('refuses a battery outside what the charger takes, pack or none', async () => {
    const asked = 'supply source: car 9V 10A charger: 0.5/1/2A 12.24-30V'
    for (const question of [asked, `${asked} pack: 4S 1500 LiPo`, `${asked} chemistry: LiPo`]) {
      expect((await answered(question)).verdict).toBe('do not charge')
    }
  })

  it('holds the supply to what the cable carries', async () => {
    const reply = await answered(`supply source: PD 100W charger: ${charger} cable: 3A`)
    expect(figure(reply, 'supplyPower')?.value).toBe(60)
    expect(reply.assumed.join(' ')).not.toContain('marked for 5 A')
  })

  it('sets no pack above its limit, whatever the supply has', async () => {
    const reply = await answered(`supply source: PD 100W charger: ${charger} pack: 3S 450 LiPo`)
    expect(reply.headline).toMatch(/balance charge, 0\.[45]\d*.A/)
  })

  it('finds the smallest that carries a setting', async () => {
    const reply = await answered(`supply pack: 4S 1500 LiPo current: 2A charger: ${charger}`)
    // By hand: 2 A x 16.8 V / 0.85 = 39.5 W; the first class above with an offer from 10 V up is 45 W at 15 V.
    expect(figure(reply, 'inputPower')?.value).toBeCloseTo(39.53, 2)
    expect(figure(reply, 'usbSupply')?.value).toBe(45)
  })

  it('refuses a current above the limit of the pack', async () => {
    const reply = await answered('supply pack: 6S 5000 LiPo current: 15A')
    expect(reply).toMatchObject({ verdict: 'do not charge', figures: [] })
    expect(reply.headline).toMatch(/Do not charge at 15.A: 10.A is all .*Set 5.A instead/)
  })

  it('refuses a source outside the input window, and a cell count the charger lacks', async () => {
    expect((await answered(`supply source: USB 5V 2A charger: ${charger}`)).verdict).toBe('do not charge')
    expect((await answered('supply source: PD 65W pack: 6S 1300 LiPo charger: 1A 1-4S')).verdict).toBe('do not charge')
  })

  it('shares the supply among chargers, and says what flat out takes', async () => {
    // By hand: 2 x 200 W / 0.85 = 470.6 W of 360 W; each has 180 W x 0.85 = 153 W; / 25.2 V = 6.07 A.
    const reply = await answered(`supply source: 12V 30A charger: ${charger} count: 2`)
    expect(reply.headline).toMatch(/No: flat out 2 of them take 471.W, and it gives 360.W\. Hold each to 153.W/)
    expect(figure(reply, 'current6S')?.value).toBe(6)
    const larger = await answered(`supply source: 24V 30A charger: ${charger} count: 2`)
    expect(larger.headline).toMatch(/Yes: flat out 2 of them take 471.W of its 720.W/)
  })

  it('adds up chargers that differ, and counts those that are alike', async () => {
    // By hand: (300 + 2 x 50) W / 0.85 = 470.6 W.
    const mixed = await answered('supply source: 24V 18A charger: 0.1-20A 300W; 2x 0.1-5A 50W')
    expect(mixed.headline).toMatch(/No: flat out they take 471.W together, and it gives 432.W/)
    // By hand: 2500 W x 0.65 = 1625 W; 300 W / 0.85 = 352.9 W: four times.
    expect(figure(await answered('supply source: generator 2.5kW charger: 0.1-20A 300W'), 'chargerCount')?.value).toBe(
      4,
    )
  })

  it('says first whether packs at a current are carried, and how long a battery does', async () => {
    // By hand: 3 x 1.3 A x 16.8 V / 0.85 = 77.1 W.
    expect((await answered('supply source: 12V 7A pack: 4S 1300 LiPo current: 1.3A count: 3')).headline).toMatch(
      /Yes: 1\.3.A into 4S each takes 78.W of the 84.W/,
    )
    const short = await answered('supply source: 12V 5A pack: 4S 1300 LiPo current: 1.3A count: 3')
    expect(short.headline).toMatch(
      /No: 1\.3.A into 4S each takes 78.W, and it gives 60.W\. That is enough for 1\.01.A each/,
    )
    // By hand: 300 Wh x 0.85 = 255 Wh, at 50 W / 0.85 that is 4.3 h.
    const bank = await answered('supply source: power bank 300Wh 12V 10A charger: 0.1-5A 50W')
    expect(figure(bank, 'usable')?.value).toBeCloseTo(255, 6)
    expect(figure(bank, 'lasts')?.value).toBeCloseTo((255 * 3600) / (50 / 0.85), 3)
  })

  it('finds the amps of a supply for chargers flat out', async () => {
    const reply = await answered(`supply charger: ${charger} count: 2 voltage: 24V`)
    // By hand: 470.6 W / 24 V = 19.6 A, a fifth more 23.6 A.
    expect(reply.headline).toMatch(/take 471.W .* that is 19\.61.A: take a supply of 23\.6.A/)
    expect((await answered(`supply charger: ${charger} voltage: 5V`)).verdict).toBe('do not charge')
  })

  it('finds what a setting takes where only cells are told', async () => {
    // By hand: 6 A x 25.2 V / 0.85.
    expect(figure(await answered('supply chemistry: 6S LiPo current: 6A'), 'inputPower')?.value).toBeCloseTo(177.9, 1)
  })

  it('takes of a generator what a supply behind it passes on', async () => {
    expect(figure(await answered(`supply source: generator 1000W charger: ${charger}`), 'supplyPower')?.value).toBe(650)
  })

  it('weighs what chargers take at their plugs against four fifths of what a generator gives', async () => {
    const carries = async (asked: string) => (await answered(`supply source: generator 1000W ${asked}`)).headline
    expect(await carries('draws: 790W')).toContain('Yes')
    expect(await carries('draws: 410W count: 2')).toContain('No')
    expect((await answered('supply draws: 400W')).headline).toContain('500 W or more')
  })

  it('wants a supply or a pack', async () => {
    expect((await asking.ask('supply')).problem?.expected).toContain('supply')
    expect((await asking.ask('supply current: 2A')).problem?.what).toContain('the supply, or the pack')
  })
})
