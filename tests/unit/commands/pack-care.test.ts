// The session plan and the care of packs, asked as a pilot asks: plan, storage, cells, parallel, health, lend.

import { beforeAll, describe, expect, it } from 'vitest'
import type { Reply } from '../../../src/assistant/reply.ts'
import { type Asking, askingOf, moderator } from '../../support/ask.ts'
import { commandNamed } from '../../support/commands.ts'

const cells = commandNamed('cells')
const health = commandNamed('health')
const storage = commandNamed('storage')
const houseSet = commandNamed('house set')
const kitSave = commandNamed('kit save')
const parallel = commandNamed('parallel')
const plan = commandNamed('plan')
const lend = commandNamed('lend')

const commands = [plan, storage, cells, parallel, health, lend]

let asking: Asking
beforeAll(async () => {
  asking = await askingOf([...commands, houseSet, kitSave])
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
const spaced = (text: string) => text.replaceAll(' ', ' ')
/** What a reply that is no answer says, and what it judges. */
const problemTo = async (question: string) => {
  const { verdict, problem } = await asking.ask(question)
  return [verdict, problem?.what ?? ''] as const
}
const keys = ({ cautions }: Reply) => cautions.map(({ key }) => key)

describe('plan', () => {
  const bag =
    'plan packs: 4x 3S 720 LiHV at 3.7V; 2S 450 LiPo at 2.1V; 6S 1300 LiPo swollen chargers: 2x 0.5/1/2/4A 80W 1-4S sources: 4S 5000 Li-ion at 80%'

  it('names the order, the charger, the setting and the times of every charge, and draws them', async () => {
    const reply = await answered(bag)
    const lines = reply.working.map(spaced).filter(line => line.includes('on charger'))
    expect(lines).toHaveLength(4)
    expect(lines[0]).toMatch(
      /^Start to .*: 3S 720mAh LiHV #1 on charger 1, fed by 4S 5000mAh Li-ion\. Set 0\.5 A and 4\.35 V/,
    )
    expect(figure(reply, 'packsReady')?.value).toBe(4)
    expect(reply.charts).toHaveLength(1)
    expect(reply.charts[0]).toMatchObject({ kind: 'timeline' })
  })

  it('names every unwise pack with its reason, and what to do with it', async () => {
    const reply = await answered(bag)
    expect(reply.verdict).toBe('go with care')
    expect(spaced(reply.headline)).toMatch(
      /2S 450mAh LiPo: .*2\.10 V a cell is below 2\.50 V, where such cells are damaged/,
    )
    expect(reply.headline).toMatch(/6S 1300mAh LiPo: .*a swollen pack can catch fire/)
    expect(keys(reply)).toEqual(expect.arrayContaining(['deadCell', 'swollen', 'severalAtOnce', 'batterySource']))
  })

  it('tells the voltage at which to stop each battery', async () => {
    const line = (await answered(bag)).working.map(spaced).find(text => text.startsWith('4S 5000mAh Li-ion: the plan'))
    expect(line).toContain('Stop it at 12 V under load')
  })

  it('hurries only where the time asks for it, and says so', async () => {
    const calm = await answered(bag)
    const hurried = await answered(`${bag} by: 150min`)
    expect(calm.headline).not.toContain('To make the time')
    expect(hurried.headline).toContain('To make the time, currents are above the usual ones.')
    expect(figure(hurried, 'packsReady')?.value).toBe(4)
    expect(figure(hurried, 'lastReady')?.value).toBeLessThanOrEqual(9000)
  })

  it('says how many are late, and how many the flights do not need', async () => {
    const late = await answered(`${bag} by: 75min`)
    expect(late.headline).toContain('Left out: 2 for lack of time')
    const few = await answered(`${bag} flights: 2`)
    expect(figure(few, 'packsReady')?.value).toBe(2)
    expect(few.working.join(' ')).toContain('The flights that were asked for need no more packs')
  })

  it('refuses where nothing can be charged, and ends the question where a pack smokes', async () => {
    expect((await answered('plan packs: 6S 1300 LiPo chargers: 1A 1-4S')).verdict).toBe('do not charge')
    const fire = await asking.ask('plan packs: 6S 1050 LiPo smoking chargers: 1A')
    expect(fire.verdict).toBe('do not charge')
    expect(fire.headline).toMatch(/call the fire service/)
  })

  it('names what holds of one pack only, and leaves out what crashed', async () => {
    const low = await answered('plan packs: 3S 720 LiHV at 2.9V; 3S 850 LiPo at 3.7V chargers: 0.1-5A by 0.1')
    expect(low.verdict).toBe('go with care')
    const two = await answered('plan packs: 2x 3S 850 LiPo; 6S 1300 LiPo swollen chargers: 2x 0.1-5A by 0.1')
    expect(two.cautions.find(({ key }) => key === 'severalAtOnce')?.text).toMatch(/^2 packs charge at once/)
    expect(spaced(low.headline)).toMatch(/^3S 720mAh LiHV: 2.90 V a cell is very low: start with a tenth/)
    const crashed = await answered('plan packs: 3S 850 LiPo; 6S 1300 LiPo crashed chargers: 0.1-5A by 0.1')
    expect(crashed.verdict).toBe('go with care')
    expect(figure(crashed, 'packsReady')?.value).toBe(1)
    expect(crashed.headline).toContain('6S 1300mAh LiPo: Leave it out, do not charge it with the others')
  })

  it('says that packs are full, and that none is ready in time', async () => {
    const full = await answered('plan packs: 2x 3S 850 LiPo at 4.2V chargers: 1A')
    expect(full.verdict).toBe('go')
    expect(full.headline).toBe('Nothing to charge: 2 packs are full already.')
    const late = await answered('plan packs: 3S 850 LiPo at 3.5V chargers: 1A by: 10min')
    expect(late.verdict).toBe('go with care')
    expect(spaced(late.headline)).toContain('No pack can be charged within the 10 min.')
  })

  it('takes saved names inside its lists', async () => {
    await answered('kit save name: wren pack: 3S 720 LiHV for: me')
    const reply = await answered('plan packs: 2x wren at 3.7V per cell; 2S 450 LiPo chargers: 0.5/1A')
    expect(reply.readAs).toContain('wren')
    expect(figure(reply, 'packsReady')?.value).toBe(3)
  })

  it('says where it proves its plan best, and bounds it where it does not', async () => {
    expect((await answered(bag)).working.join(' ')).toContain('this plan is proven best')
    const kinds = Array.from(
      { length: 20 },
      (_, index) => `3x 3S ${700 + 37 * index} LiHV at ${3.5 + index / 100}V per cell`,
    )
    const large = await answered(`plan packs: ${kinds.join('; ')} chargers: 2x 0.1-5A by 0.1; 2x 0.5/1/2A`)
    expect(large.working.join(' ')).toMatch(/no plan has the packs ready after less than|of any plan at most/)
  })
})

describe('storage', () => {
  it('discharges a full pack: how much, how long, where to stop, by when', async () => {
    const reply = await answered('storage pack: 4S 1500 LiPo from: 4.2V per cell discharge: 1A')
    expect(spaced(reply.headline)).toMatch(
      /^Discharge it: .*Stop where it rests at 3\.85 V a cell \(15\.4 V for 4S\).*Within two days/,
    )
    const moved_Ah = figure(reply, 'chargeMoved')?.value ?? 0
    expect(figure(reply, 'dischargeTime')?.value).toBeCloseTo(moved_Ah * 3600, 6)
    expect(keys(reply)).toContain('drained')
  })

  it('shares the watts of a load among several packs, and else takes them in turn', async () => {
    const one = await answered('storage pack: 4S 1500 LiPo from: full discharge: 1A')
    const alone_s = figure(one, 'dischargeTime')?.value ?? 0
    const inTurn = await answered('storage pack: 4S 1500 LiPo count: 3 from: full discharge: 1A')
    expect(figure(inTurn, 'totalTime')?.value).toBeCloseTo(3 * alone_s, 6)
    const atOnce = await answered('storage pack: 4S 1500 LiPo count: 4 from: full discharge: 1A power: 40W')
    // 40 W on four packs of about 16 V are 0.625 A each.
    expect((figure(atOnce, 'totalTime')?.value ?? 0) / alone_s).toBeCloseTo(1 / 0.63, 1)
    expect(spaced(atOnce.headline)).toMatch(/For all 4 at once, which share 40 W/)
  })

  it('takes longer where the power holds the current down', async () => {
    const free = await answered('storage pack: 4S 1500 LiPo from: full discharge: 2A')
    const held = await answered('storage pack: 4S 1500 LiPo from: full discharge: 2A power: 10W')
    expect(figure(held, 'dischargeTime')?.value).toBeGreaterThan(3 * (figure(free, 'dischargeTime')?.value ?? 0))
  })

  it('charges a flown pack up, leaves one that is there, and refuses a damaged one', async () => {
    expect((await answered('storage pack: 3S 720 LiHV from: 3.6V per cell')).headline).toMatch(/^Charge it up/)
    expect((await answered('storage pack: 3S 720 LiHV from: 3.84V per cell')).headline).toMatch(/^Leave it/)
    expect((await answered('storage pack: 3S 720 LiHV from: 2.2V per cell')).verdict).toBe('do not charge')
  })

  it('says which way without a capacity, and neither how much nor how long', async () => {
    // What was told of other packs before is not told here.
    asking = await askingOf([...commands, houseSet, kitSave])
    const up = await answered('storage chemistry: 3S LiHV from: 3.6V per cell')
    expect(up.headline).toMatch(/^Too low to store: charge it up/)
    expect(figure(up, 'chargeMoved')).toBeUndefined()
    expect((await answered('storage chemistry: LiPo from: full')).headline).toMatch(/^Too full to store: discharge/)
    expect((await answered('storage chemistry: LiPo from: 3.86V per cell')).headline).toMatch(/^Leave it/)
    expect((await answered('storage chemistry: LiPo from: 2.2V per cell')).verdict).toBe('do not charge')
  })

  it('takes no more out than the charger puts in', async () => {
    const reply = await answered('storage pack: 4S 1500 LiPo from: full charger: 0.1-0.5A by 0.1')
    expect(figure(reply, 'dischargeCurrent')?.value).toBe(0.5)
  })
})

describe('what is told of the cells is judged, whatever is asked', () => {
  it.each([
    'storage pack: 3S 720 LiHV from: storage',
    'storage pack: 3S 720 LiHV from: 3.6V per cell',
    'storage pack: 3S 720 LiHV from: full',
    'storage pack: 3S 720 LiHV',
    'health pack: 3S 720 LiHV resistance: 25mΩ',
  ])('no go at 120 or -30 °C: %s', async question => {
    for (const temperature of ['120°C', '-30°C']) {
      const reply = await answered(`${question} temperature: ${temperature}`)
      expect(reply).toMatchObject({ verdict: 'do not charge', figures: [] })
    }
  })

  it('takes no more out of a pack than it may give for long, and a quarter of what its label says', async () => {
    const from = 'storage pack: 4S 1500 LiPo from: full discharge: 5A'
    expect((await answered(from)).headline).toMatch(/^Do not take 5.A from it: 3.A is the most/)
    expect(figure(await answered(from.replace('LiPo', 'LiPo 100C')), 'dischargeCurrent')?.value).toBe(5)
  })

  it('sees a dead cell in the volts at rest of a load', async () => {
    const reply = await answered('health pack: 6S 1300 LiPo one: rest 14V other: 20A 12V')
    expect(reply.headline).toMatch(/2\.33.V a cell is below 2\.50.V/)
  })
})

describe('cells', () => {
  it.each([
    ['3.82 3.83 3.81 3.83', 'go', /^Balanced: .* 0\.02.V apart/],
    ['3.82 3.83 3.79 3.83', 'go with care', /^Balance first: cell 3 is lowest/],
    ['3.82 3.83 3.66 3.83', 'go with care', /^The cells are 0\.17.V apart: balance them first/],
    ['3.92 3.93 3.61 3.93', 'do not charge', /Retire the pack/],
    ['3.82 3.83 2.3 3.83', 'do not charge', /2\.30.V a cell is below 2\.50.V.*Retire it/],
    ['4.33 4.34 4.33 4.34', 'do not charge', /look like LiHV/],
    ['4.19 4.27 4.19 4.19', 'do not charge', /4\.27.V a cell is far above full/],
  ])('4S LiPo at %s: %s', async (volts, verdict, words) => {
    const reply = await answered(`cells pack: 4S 1500 LiPo volts: ${volts}`)
    expect(reply.verdict).toBe(verdict)
    expect(reply.headline).toMatch(words)
  })

  it.each([
    ['3.82 3.83 3.81', /there are 3 readings/],
    ['3.82 0 7.65 3.83', /balance lead does not connect at cell 2/],
  ])('4S LiPo at %s: measured badly, and never a go', async (volts, words) => {
    const [verdict, what] = await problemTo(`cells pack: 4S 1500 LiPo volts: ${volts}`)
    expect(verdict).toBe('do not charge')
    expect(what).toMatch(words)
  })

  it.each([
    ['3.80 3.83', 'go'],
    ['3.80 3.84', 'go with care'],
    ['3.80 3.90', 'go with care'],
    ['3.80 4.00', 'go with care'],
    ['3.79 4.00', 'do not charge'],
  ])('cells at %s: %s', async (volts, verdict) => {
    expect((await answered(`cells pack: 2S 1500 LiPo volts: ${volts}`)).verdict).toBe(verdict)
  })

  it('judges the end of a charge by half the spread, and sees another chemistry there', async () => {
    const rest = await answered('cells pack: 3S 850 LiPo volts: 4.20 4.20 4.18')
    const full = await answered('cells pack: 3S 850 LiPo volts: 4.20 4.20 4.18 when: full')
    expect([rest.verdict, full.verdict]).toEqual(['go', 'go with care'])
    expect((await answered('cells pack: 3S 850 LiHV volts: 4.2 4.2 4.2 when: full')).headline).toContain(
      'another chemistry',
    )
    expect((await answered('cells pack: 3S 850 LiPo volts: 3.3 3.3 3.3')).headline).toContain('LiFe, or empty')
  })

  it('balances in the time that the charge between the cells takes at the balance current', async () => {
    const slow = await answered('cells pack: 4S 1500 LiPo volts: 3.82 3.83 3.79 3.83 balance: 0.1A')
    const fast = await answered('cells pack: 4S 1500 LiPo volts: 3.82 3.83 3.79 3.83 balance: 0.3A')
    expect((figure(slow, 'balanceTime')?.value ?? 0) / (figure(fast, 'balanceTime')?.value ?? 1)).toBeCloseTo(3, 9)
  })
})

describe('plan on outputs that share watts', () => {
  const two = '6S 2200 LiPo at 2.2A; 3S 1500 LiPo at 1.5A'

  it('says what both take together, and runs them at once where it fits', async () => {
    const reply = await answered(`plan packs: ${two} chargers: 0.1-10A by 0.1 100W ports: 2`)
    expect(figure(reply, 'outputPower')?.value).toBeCloseTo(2.2 * 25.2 + 1.5 * 12.6, 6)
    expect(spaced(reply.headline)).toMatch(/Yes, at once: together they take 74 W of the 100 W/)
  })

  it('gives each its part where it does not', async () => {
    const reply = await answered(`plan packs: ${two} chargers: 0.1-10A by 0.1 60W ports: 2`)
    expect(spaced(reply.headline)).toMatch(/Not all at once like that: together 74 W.* share 60 W. Each gets 30 W/)
    expect(spaced(reply.headline)).toMatch(/at 1.1 A to 4.20 V/)
  })

  it('sets for each pack what was asked for, and refuses what it may not have', async () => {
    const reply = await answered('plan packs: 4x 3S 450 LiPo at 0.3A ports: 4')
    expect(spaced(reply.headline)).toMatch(/4x 3S 450mAh LiPo on chargers 1, 2, 3, 4 at 0.3 A/)
    expect(spaced((await answered('plan packs: 2x 3S 450 LiPo at 2A')).headline)).toMatch(/Do not charge at 2 A/)
  })
})

describe('parallel', () => {
  it.each([
    ['3S 850 LiPo at 3.8V per cell; 4S 850 LiPo at 3.8V per cell', /packs of 3S and 4S/],
    ['3S 850 LiPo at 3.8V per cell; 3S 850 LiHV at 3.8V per cell', /LiPo and LiHV are full at different volts/],
    ['3S 850 LiPo at 3.95V per cell; 3S 850 LiPo at 3.8V per cell', /0.15 V a cell apart/],
    ['3S 850 LiPo at 3.8V per cell; 3S 850 LiPo swollen', /a swollen pack can catch fire/],
    ['3S 850 LiPo at 2.4V per cell; 3S 850 LiPo at 2.4V per cell', /where such cells are damaged/],
    ['3S 850 LiPo at 3.8V per cell', /one pack/],
    ['3S 850 LiPo at 20%; 3S 850 LiPo at 60%', /0.141 V a cell apart/],
    ['3S 850 LiPo at 2.9V per cell; 3S 850 LiPo at 2.95V per cell', /must start slowly, which no board does/],
    ['4S 1500 LiPo 4mΩ at 3.78V per cell; 4S 1300 LiPo 5mΩ at 3.7V per cell', /within 0.037 V a cell/],
    ['2x 3S 850 LiPo at full', /nothing to charge/],
    ['2x 3S 850 LiPo at 3.8V per cell; 3S 850 LiPo crashed at 3.8V per cell', /after a crash/],
  ])('refuses %s', async (packs, words) => {
    const reply = await answered(`parallel packs: ${packs}`)
    expect(reply.verdict).toBe('do not charge')
    expect(spaced(reply.headline)).toMatch(words)
  })

  it('sets one current for all within what is left when the largest comes unplugged', async () => {
    const alike = await answered('parallel packs: 2x 3S 1000 LiPo at 3.8V per cell')
    expect(figure(alike, 'setCurrent')?.value).toBe(2)
    const unlike = await answered('parallel packs: 3S 500 LiPo at 3.8V per cell; 3S 2000 LiPo at 3.8V per cell')
    expect(figure(unlike, 'setCurrent')?.value).toBeLessThanOrEqual(2 * 0.5)
  })

  it.each([
    [
      '6x 4S 1100 LiPo charger: 0.1-10A by 0.1 100W current: 1C',
      5.9,
      /99 W at the end: all that the charger's power allows/,
    ],
    ['5x 3S 800 LiPo charger: 0.1-3A by 0.1 current: 1C', 3, /Each gets 0.6 A .* all that the charger gives/],
    ['5x 3S 800 LiPo current: 0.6A each', 3, /Each gets 0.6 A \(0.75C\), 38 W/],
    ['5x 3S 800 LiPo current: 4A', 4, /Each gets 0.8 A/],
  ])('gives a board what its charger gives: %s', async (asked, set_A, words) => {
    const reply = await answered(`parallel packs: ${asked}`)
    expect(figure(reply, 'setCurrent')?.value).toBe(set_A)
    expect(spaced(reply.headline)).toMatch(words)
  })

  it.each([
    ['6S 1050 LiPo charger: 0.1-12A by 0.1 180W current: 1C', 6, /6 fit at 1.05 A each. 7 would take 7.35 A, 185 W/],
    ['2S 300 LiPo charger: 0.1-2A by 0.1 50W', 6, /more than the charger gives/],
    ['2S 300 LiPo charger: 0.1-2A by 0.1 50W places: 4', 4, /would carry more/],
    ['6S 4000 LiPo charger: 0.1-5A by 0.1 60W current: 1C', 0, /None fits at 4 A/],
  ])('counts the packs that a charger takes at once: %s', async (asked, count, words) => {
    const reply = await answered(`parallel packs: ${asked}`)
    expect(figure(reply, 'atOnce')?.value).toBe(count)
    expect(spaced(reply.headline)).toMatch(words)
  })

  it('charges more packs than the board has places for in rounds', async () => {
    const reply = await answered('parallel packs: 10x 4S 1200 LiPo places: 4 current: 1C')
    expect(figure(reply, 'setCurrent')?.value).toBe(4.8)
    expect(figure(reply, 'totalTime')?.value).toBeCloseTo((figure(reply, 'chargeTime')?.value ?? 0) * 3, 6)
    expect(spaced(reply.headline)).toMatch(/In 3 rounds/)
  })

  it('says that the charge is far apart where the curve is flat, and what takes too long', async () => {
    const flat = await answered('parallel packs: 2S 2500 LiFe at 3.28V per cell; 2S 2500 LiFe at 3.31V per cell')
    expect(spaced(flat.headline)).toMatch(/Their charge is 35 % apart/)
    const slow = await answered('parallel packs: 10x 6S 5000 LiPo at 3.7V per cell charger: 1A')
    expect(spaced(slow.headline)).toMatch(/nobody stays with it for more than 12 h/)
  })

  it('asks to measure packs of which no volts were said, before all else', async () => {
    const reply = await asking.ask('parallel packs: 2x 3S 1000 LiPo')
    expect(reply.verdict).toBe('go with care')
    expect(reply.headline).toMatch(/^Measure every pack at rest first/)
  })
})

describe('health', () => {
  it('works the resistance out of two loads', async () => {
    const reply = await answered('health pack: 6S 1300 LiPo one: rest 23.8V other: 20A 21.4V')
    expect(figure(reply, 'cellResistance')?.value).toBeCloseTo(0.02, 9)
  })

  it('takes the temperature out: a cold reading counts for less', async () => {
    const cold = await answered('health pack: 3S 720 LiHV resistance: 40mΩ temperature: 0°C')
    const warm = await answered('health pack: 3S 720 LiHV resistance: 40mΩ temperature: 25°C')
    expect(figure(cold, 'cellResistance25C')?.value).toBeLessThan((figure(warm, 'cellResistance25C')?.value ?? 0) / 2)
  })

  it.each([
    ['25mΩ', 'go', /1.3 times that of itself/],
    ['45mΩ', 'go with care', /tired/],
    ['70mΩ', 'do not charge', /worn out/],
  ])('beside 20 mΩ when new, %s means %s', async (resistance, verdict, words) => {
    const reply = await answered(`health pack: 3S 720 LiHV resistance: ${resistance} new: 20mΩ`)
    expect(reply.verdict).toBe(verdict)
    expect(reply.headline).toMatch(words)
  })

  it('points at a cell that stands out, and refuses loads that tell nothing', async () => {
    expect((await answered('health pack: 4S 1500 LiPo resistance: 9 10 9 15 mΩ')).headline).toContain(
      'Cell 4 stands out',
    )
    const odd = await asking.ask('health pack: 4S 1500 LiPo one: 5A 14V other: 10A 15V')
    expect(odd.problem?.what).toContain('More amps')
  })
})

describe('lend', () => {
  it('gives energy, time and the share of the device, and the volts at which to stop', async () => {
    const reply = await answered('lend pack: 4S 1500 LiPo power: 10W device: 19Wh')
    const given_Wh = figure(reply, 'energyGiven')?.value ?? 0
    expect(given_Wh).toBeLessThan(3.85 * 4 * 1.5)
    expect(figure(reply, 'lendTime')?.value).toBeCloseTo((given_Wh / 10) * 3600, 6)
    expect(figure(reply, 'stopPerCell')?.value).toBeCloseTo(3.4, 9)
    expect(figure(reply, 'stopAtRest')?.value).toBeCloseTo(3.6, 9)
    expect(keys(reply)).toContain('drained')
  })

  it('lends less from a pack that is less full, and no more than 2C', async () => {
    const full = await answered('lend pack: 4S 1500 LiPo power: 10W')
    const half = await answered('lend pack: 4S 1500 LiPo power: 10W from: 50%')
    expect(figure(half, 'energyGiven')?.value).toBeLessThan(figure(full, 'energyGiven')?.value ?? 0)
    const hurried = await answered('lend pack: 2S 450 LiPo power: 20W')
    expect(hurried).toMatchObject({ verdict: 'do not charge', figures: [] })
    expect(hurried.headline).toMatch(/^Do not take 3.46.A from it: 0.9.A is the most/)
    expect((await answered('lend pack: 2S 450 LiPo power: 2W from: 3.3V per cell')).headline).toContain('floor')
  })

  it.each([
    ['at its floor', 'from: 3.6V per cell'],
    ['with a dead cell', 'from: 2.4V per cell'],
    ['too cold', 'temperature: -25°C'],
    ['too hot', 'temperature: 70°C'],
    ['above full', 'from: 4.3V per cell'],
  ])('refuses a pack that is %s', async (_, detail) => {
    const reply = await answered(`lend pack: 4S 1500 LiPo power: 10W ${detail}`)
    expect(reply).toMatchObject({ verdict: 'do not charge', figures: [] })
  })

  it('refuses a load under which the pack sinks to its floor at once', async () => {
    const reply = await answered('lend pack: 2S 450 LiPo 700mΩ power: 4W from: 15%')
    expect(reply).toMatchObject({ verdict: 'do not charge', figures: [] })
    expect(reply.headline).toContain('at once')
  })

  it('says that somebody stays with a pack that lends for long', async () => {
    const reply = await answered('lend pack: 2S 5000 Li-ion power: 5W')
    expect(reply.verdict).toBe('go with care')
    expect(reply.headline).toContain('somebody has to stay with it')
  })

  it('stops higher where the house says so', async () => {
    const strict = { ...moderator, community: { id: 'room:strict', name: 'Strict' } }
    await asking.ask('house set chemistry: LiPo floor: 3.6V', strict)
    const reply = await asking.ask('lend pack: 4S 1500 LiPo power: 10W', strict)
    expect(figure(reply, 'stopPerCell')?.value).toBeCloseTo(3.6, 9)
  })
})
