// The three questions as they are asked and answered: current, time and source.

import { describe, expect, it } from 'vitest'
import type { Reply } from '../../../src/assistant/reply.ts'
import { createAssistant } from '../../../src/assistant/running/assistant.ts'
import { askingOf, member } from '../../support/ask.ts'
import { commandNamed } from '../../support/commands.ts'

const current = commandNamed('current')
const time = commandNamed('time')
const source = commandNamed('source')

const commands = [current, time, source]
const { ask, faults, memory } = await askingOf(commands)

const value = (reply: Reply, key: string) => reply.figures.find(figure => figure.key === key)?.value
const keys = (reply: Reply) => reply.figures.map(({ key }) => key)
const cautions = (reply: Reply) => reply.cautions.map(({ key }) => key)

describe.each(commands.map(command => [command.name, command] as const))('%s', (_, command) => {
  it.each(command.examples)('answers its example: %s', async example => {
    const reply = await ask(example)
    expect(reply.problem).toBeUndefined()
    expect(reply.verdict).toMatch(/^go/)
    expect(reply.working.length).toBeGreaterThan(2)
    expect(faults).toEqual([])
  })

  it.each(command.examples)('offers follow-ups that can be asked: %s', async example => {
    const { followUps } = await ask(example)
    expect(followUps.length).toBeGreaterThan(0)
    for (const { question } of followUps) expect((await ask(question)).problem).toBeUndefined()
  })

  it.each(command.examples)('says where its rules come from: %s', async example => {
    const working = (await ask(example)).working.join(' ')
    expect(working).toMatch(/common practice/)
  })
})

describe('current', () => {
  it('says what to set in the first line, and why', async () => {
    const reply = await ask('current pack: 3S 650 LiHV charger: 1/2/3/5A')
    expect(reply.headline).toMatch(/^3S LiHV, balance charge, 1 A, ends at 13\.05 V \(4\.35 V a cell\)\./)
    expect(reply.verdict).toBe('go with care')
    expect(reply.cautions.map(({ text }) => text).join(' ')).toContain('1.54C, more than the usual 1C')
    expect(keys(reply)).toEqual([
      'setCurrent',
      'cutoffPerCell',
      'cutoffPack',
      'cRate',
      'wantedCurrent',
      'highestCurrent',
      'inputPower',
      'stopCapacity',
      'stopTimer',
    ])
    expect(value(reply, 'cRate')).toBeCloseTo(1 / 0.65, 9)
  })

  it('says what the source must give and which limit bound', async () => {
    const reply = await ask('current pack: 6S 5000 LiPo source: PD 65W')
    // 65 W x 0.85 / 25.2 V = 2.19 A; the input is then at most 65 W / 20 V.
    expect(value(reply, 'setCurrent')).toBe(2.19)
    expect(value(reply, 'inputCurrent')).toBeLessThanOrEqual(3.25)
    expect(reply.headline).toContain('That is all that the source carries.')
    expect(reply.working.join(' ')).toContain('20 V × 3.25 A = 65 W')
  })

  it('has nothing to set where the pack is above its target already', async () => {
    const reply = await ask('current pack: 3S 1500 LiPo from: 4.1V per cell to: storage')
    expect(reply).toMatchObject({ verdict: 'do not charge', figures: [] })
  })

  it('teaches where it refuses', async () => {
    const reply = await ask('current pack: 1S 450 LiHV charger: 1/2/3/5A')
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toContain('from 500 mAh up')
    expect(reply.figures).toEqual([])
  })

  it('refuses a LiFe pack to 4.2 V, a hot pack, a dead pack and a source below the window', async () => {
    const refused = [
      'current pack: 3S 1000 LiFe to: 4.2V per cell',
      'current pack: 3S 720 LiHV temperature: 70°C',
      'current pack: 3S 720 LiHV from: 2.1V per cell',
      'current pack: 3S 720 LiHV charger: 0.5/1A 9-20V source: 5V 3A',
    ]
    for (const question of refused) expect((await ask(question)).verdict).toBe('do not charge')
    expect((await ask(refused[0] ?? '')).headline).toContain('Set 3.60 V a cell at most')
    expect((await ask(refused[2] ?? '')).headline).toContain('Retire it')
  })
})

describe('the watts of a charger', () => {
  it('are said as amps into this pack where they end below its own', async () => {
    const reply = await ask('current pack: 5S 1200 LiPo charger: 0.1-5A by 0.1 50W')
    expect(reply.headline.replaceAll('\u00a0', ' ')).toContain('the charger gives up to 2.38 A: 50 W at 21 V')
    expect((await ask('current pack: 5S 1200 LiPo charger: 0.1-5A by 0.1 150W')).headline).not.toContain('up to')
  })
})

describe('time', () => {
  it('answers the measured form of the question with its documented figures', async () => {
    const reply = await ask(
      'time pack: 1S 5450mAh LiPo current: 5.45A from: 3V per cell to: 4.10V until: 0.545A resistance: 8mΩ',
    )
    expect(reply.problem).toBeUndefined()
    expect(keys(reply)).toEqual(expect.arrayContaining(['chargeTime', 'timeToCutoff', 'chargeIn', 'energyIn', 'heat']))
    const chargeTime = reply.figures.find(({ key }) => key === 'chargeTime')
    expect(chargeTime?.unit).toBe('s')
    expect(chargeTime?.low).toBeLessThan(chargeTime?.value ?? 0)
    expect(chargeTime?.high).toBeGreaterThan(chargeTime?.value ?? 0)
    expect(value(reply, 'cutoffPerCell')).toBe(4.1)
  })

  it('gives no figures for a current above the limit, and says what to set instead', async () => {
    const reply = await ask('time pack: 1S 5450mAh LiPo current: 16.35A')
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toMatch(/^Do not charge at 16\.\d+ A: 10\.9 A is all that the cells take/)
    expect(reply.headline).toContain('Set 5.45 A instead')
    expect(reply.figures).toEqual([])
  })

  it('says out loud what it took for granted', async () => {
    const reply = await ask('time pack: 3S 720 LiHV')
    expect(reply.assumed).toEqual(
      expect.arrayContaining([
        expect.stringContaining('flown down to its floor, 3.60 V a cell'),
        'set to the advised current, 0.72 A',
      ]),
    )
  })

  it('takes the step of the charger below the current that was asked for', async () => {
    const reply = await ask('time pack: 3S 720 LiHV current: 0.7A charger: 0.5/1/2/4A')
    expect(value(reply, 'setCurrent')).toBe(0.5)
    expect(reply.assumed).toContain('the charger has no step of 0.7 A; 0.5 A is taken')
    const tooLow = await ask('time pack: 3S 720 LiHV current: 0.3A charger: 0.5/1/2/4A')
    expect(tooLow.problem).toMatchObject({ token: '0.3A', example: 'current: 0.5A' })
  })

  it('is narrowed by a measured capacity', async () => {
    const width = async (question: string) => {
      const { low = 0, high = 0 } = (await ask(question)).figures[0] ?? {}
      return high - low
    }
    const plain = 'time pack: 3S 1500 LiPo current: 1.5A from: 20%'
    expect(await width(`${plain} capacity: 1500mAh`)).toBeLessThan(await width(plain))
  })

  it('tells how warm the cells grow where that is much, and has a care for it', async () => {
    const hard = await ask('time pack: 6S 5000 LiPo 4C charge current: 20A temperature: 30°C')
    expect(value(hard, 'warmest')).toBeGreaterThan(40)
    expect(cautions(hard)).toContain('warmsUp')
    const gentle = await ask('time pack: 6S 5000 LiPo current: 5A temperature: 20°C')
    expect(keys(gentle)).not.toContain('warmest')
    expect(cautions(gentle)).not.toContain('warmsUp')
  })

  it('has nothing to do where the pack is there already', async () => {
    const reply = await ask('time pack: 3S 1500 LiPo from: 4.1V per cell to: storage')
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toContain('nothing to charge')
    expect(reply.figures).toEqual([])
  })

  it('names a percentage as the goal where one was asked for', async () => {
    const reply = await ask('time pack: 3S 1500 LiPo from: 10% to: 30%')
    expect(reply.headline).toContain('3S LiPo, 1.5 A, unplug it at 30 %.')
    expect(value(reply, 'endCharge')).toBeCloseTo(30, 6)
  })

  it('asks for an end current below the charge current', async () => {
    const { problem } = await ask('time pack: 3S 1500 LiPo current: 1A until: 2A')
    expect(problem).toMatchObject({ token: '2A', example: 'until: 0.1A' })
  })

  it('says what is in where the clock of the charger ends it, and asks that again', async () => {
    const reply = await ask('time pack: 3S 1500 LiPo current: 1A from: 10% until: 45 min')
    expect(reply.headline.replaceAll('\u00a0', ' ')).toMatch(
      /^Its clock ends it after 45 min: about 750 mAh goes in, and it is at about 6\d %/,
    )
    expect(value(reply, 'chargeTime')).toBeCloseTo(2700, 6)
    expect(reply.question).toContain('until: 45min')
    expect((await ask(reply.question ?? '')).headline).toBe(reply.headline)
  })

  it('names the steps of a charger that holds no volts, and asks that again', async () => {
    const reply = await ask('time pack: 3S 1500 LiPo current: 1A from: 10% until: steps')
    expect(value(reply, 'stepsDownTime')).toBeGreaterThan(60)
    expect(keys(reply)).not.toContain('constantVoltageTime')
    expect(reply.working.join(' ')).toContain('It holds no volts: at the cutoff it halves its current')
    expect(reply.readAs).toContain('stepped down at its end')
    expect((await ask(reply.question ?? '')).figures).toEqual(reply.figures)
  })

  it('tells the end by the clock only where one is known', async () => {
    const clock = () => new Date(2026, 4, 3, 10, 0)
    const clocked = createAssistant({ commands, memory, clock, onFault: fault => expect(fault).toBeUndefined() })
    const reply = await clocked.answer('time pack: 3S 1000 LiPo', member)
    expect(reply.working.join(' ')).toMatch(
      /Started now \(10:00 by my clock\) it would end between 10:\d\d and 11:\d\d/,
    )
    expect((await ask('time pack: 3S 1000 LiPo')).working.join(' ')).not.toContain('clock')
  })
})

describe('source', () => {
  it("counts a lead of one's own, told by its gauge and length together", async () => {
    const bare = 'source source: car 10A engine off rest 12.5V 60Ah pack: 3S 1300 LiPo'
    const reply = await ask(`${bare} gauge: AWG 16 length: 5m`)
    expect(value(reply, 'sourceLoss')).toBeGreaterThan(2 * (value(await ask(bare), 'sourceLoss') ?? 0))
    expect(reply.working.join(' ')).toMatch(
      /Lead: 132 mΩ out and back, bears \d[\d.]* A for long; at 1\.\d+ A it takes 0\.2\d V/,
    )
    const open = await ask(`${bare} length: 5m`)
    expect(open.assumed.join()).toContain('the lead is not counted')
    expect(value(open, 'sourceLoss')).toBe(value(await ask(bare), 'sourceLoss'))
  })

  it('says that none is sure where a charger that loses more empties the source before the first is full', async () => {
    const bare = 'source source: 4S 10000 Li-ion pack: 6S 5000 LiPo'
    for (const question of [bare, `${bare} count: 1`]) {
      const reply = await ask(question)
      expect(reply.headline).toMatch(/^Just about: it charges 1 pack in about 1 h where .* none is sure\./)
      expect(reply.working.join(' ')).toContain('Sure and at best: the charger passes on 80 % and 90 %')
    }
  })

  it('says whether a count will do, where to stop and what is left', async () => {
    const reply = await ask('source source: 4S 5000 Li-ion pack: 3S 720 LiHV count: 6')
    expect(reply.headline).toMatch(/^Yes: it charges 6 packs/)
    expect(value(reply, 'packCount')).toBeGreaterThanOrEqual(6)
    expect(value(reply, 'stopVoltage')).toBeCloseTo(12, 9)
    expect(value(reply, 'sourceEnergyLeft')).toBeGreaterThan(0)
    expect(value(reply, 'stopAtRest')).toBeCloseTo(12.8, 9)
    expect(cautions(reply)).toContain('batterySource')
    const many = await ask('source source: 4S 5000 Li-ion pack: 3S 720 LiHV count: 60')
    expect(many).toMatchObject({ verdict: 'go with care' })
    expect(many.headline).toMatch(/^No: the source carries \d+ of the 60/)
  })

  it('has energies that add up in what it shows', async () => {
    const reply = await ask('source source: 4S 5000 Li-ion pack: 3S 720 LiHV count: 6')
    const parts = ['packEnergy', 'converterLoss', 'sourceLoss'].map(key => value(reply, key) ?? Number.NaN)
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(value(reply, 'sourceEnergyOut') ?? 0, 6)
  })

  it('says plainly that a source is too small', async () => {
    const reply = await ask('source source: 3S 500 LiPo pack: 4S 5000 LiPo')
    expect(reply).toMatchObject({ verdict: 'do not charge', figures: [] })
    expect(reply.headline).toContain('does not carry one whole charge')
  })

  it('uses no source outside what the charger takes, and no battery at its floor', async () => {
    const flat = 'source source: car 9V 10A pack: 4S 1500 LiPo'
    const outside = await ask(`${flat} charger: 0.5/1/2A 12.24-30V`)
    expect(outside).toMatchObject({ verdict: 'do not charge', figures: [] })
    expect(outside.headline).toContain('it gives 9 V, and the charger wants 12.24 V to 30 V')
    expect((await ask(flat)).headline).toContain('at its floor')
  })

  it('says where to stop a battery of a vehicle that nobody measured, and takes care', async () => {
    const reply = await ask('source source: car 10A engine off pack: 4S 1500 LiPo')
    expect(reply.verdict).toBe('go with care')
    expect(reply.headline).toContain('rests at 12.3 V, or shows 12.2 V at its poles')
    expect(cautions(reply)).toContain('starterUnmeasured')
    expect(value(reply, 'sourceChargeLeft')).toBeGreaterThanOrEqual(55)
  })

  it('says what is left of a source after the packs, and when a count is on the edge', async () => {
    const bank = (count: number) =>
      ask(`source source: power bank 100Wh PD 45W pack: 3S 1300 LiPo from: 3.6V per cell count: ${count}`)
    const three = await bank(3)
    expect(three.headline).toMatch(
      /^Yes: it charges 3 packs, .* about \d+.Wh are left to take, enough for \d to \d in all/,
    )
    const most = value(three, 'packCount') ?? 0
    expect((await bank(most)).headline).toMatch(/^Just about: /)
    expect((await bank(most + 2)).headline).toMatch(/^No: /)
  })

  it('does not count packs on a supply without end', async () => {
    const reply = await ask('source source: PD 65W pack: 3S 720 LiHV')
    expect(reply.headline).toMatch(/^Yes: it carries one pack after another/)
    expect(keys(reply)).not.toContain('packCount')
  })

  it('says that a plain power bank is too low for a charger that starts at 9 V', async () => {
    const reply = await ask('source source: power bank 74Wh pack: 3S 720 LiHV charger: 0.5/1/2A 9-20V')
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toContain('it gives 5 V, and the charger wants 9 V to 20 V')
  })
})

describe('the rules of the club', () => {
  it('hold in every answer', async () => {
    const strict = await askingOf(commands)
    await strict.memory.house.change(member.community.id, [
      { rule: 'maxRate_C', chemistry: 'LiPo', value: 0.5 },
      { rule: 'storagePerCell_V', chemistry: 'LiPo', value: 3.8 },
    ])
    const reply = await strict.ask('current pack: 3S 1000 LiPo')
    expect(value(reply, 'setCurrent')).toBe(0.5)
    expect(reply.headline).toContain('the rules of this club allow')
    const stored = await strict.ask('current pack: 3S 1000 LiPo to: storage')
    expect(value(stored, 'cutoffPerCell')).toBe(3.8)
    expect((await strict.ask('time pack: 3S 1000 LiPo current: 1A')).verdict).toBe('do not charge')
    await strict.memory.house.change(member.community.id, [{ rule: 'gentleLiIon', value: true }])
    const gentle = await strict.ask('time pack: 2S 2600 Li-ion to: 4.2V per cell')
    expect(gentle.headline).toContain('The rules of this club stop at 4.10 V a cell.')
  })
})
