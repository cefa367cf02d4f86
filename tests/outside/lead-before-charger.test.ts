// A lead between a source and its charger counts by one sum wherever it is told: Ohm's law on published copper.

import { describe, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import type { Reply } from '../../src/assistant/reply.ts'
import { askingOf, otherMember } from '../support/ask.ts'

const { ask, faults } = await askingOf(commands)
const value = (reply: Reply, key: string): number =>
  reply.figures.find(figure => figure.key === key)?.value ?? Number.NaN

// AWG 18 has 20.948 ohm a kilometre at 20 °C (ASTM B258, IEC 60028: wire.test.ts), so 5 m out and back 0.20948 ohm.
const lead_ohm = 0.020948 * 10
const lead = 'gauge: AWG 18 length: 5m'
const left_W = 10 * (12 - 10 * lead_ohm)

describe('12 V and 10 A over 5 m of AWG 18', () => {
  it('leave 99 W for a supply to give, and for a plan to share', async () => {
    const given = await ask(`supply source: 12V 10A charger: 0.1-10A by 0.1 200W ${lead}`)
    expect(value(given, 'supplyPower')).toBeCloseTo(left_W, 2)
    expect(value(given, 'supplyVoltage')).toBeCloseTo(left_W / 10, 2)
    const packs = 'packs: 6S 5000 LiPo at 10A chargers: 0.1-10A by 0.1 300W'
    const plan = await ask(`plan ${packs} sources: 12V 10A ${lead}`)
    const bare = await ask(`plan ${packs} sources: 12V 10A`)
    expect(value(bare, 'source1Power')).toBeGreaterThan(left_W)
    expect(value(plan, 'source1Power')).toBeLessThanOrEqual(left_W)
    expect(value(plan, 'lastReady')).toBeGreaterThan(1.1 * value(bare, 'lastReady'))
  })

  it('hold a charge to the same power, whichever of current, time and source is asked', async () => {
    const charge = `pack: 6S 5000 LiPo source: 12V 10A ${lead}`
    const current = await ask(`current ${charge}`)
    // What a charger passes on is taken for 85 %, and 6S ends at 25.2 V.
    expect(value(current, 'highestCurrent')).toBeCloseTo((left_W * 0.85) / 25.2, 3)
    const time = await ask(`time ${charge} current: 5A`)
    expect(value(time, 'peakInputPower')).toBeLessThanOrEqual(left_W + 0.1)
    expect(value(time, 'peakInputPower')).toBeGreaterThan(0.95 * left_W)
    const source = await ask(`source ${charge}`)
    expect(value(source, 'setCurrent')).toBe(value(current, 'setCurrent'))
    for (const { working } of [current, time, source]) expect(working.join(' ')).toContain('Lead: 209 mΩ out and back')
  })

  // Of 12 V an ideal supply gives 149.4 W at the lead's end with I = (V - sqrt(V² - 4 R P)) / 2 R.
  it('ask for a larger supply', async () => {
    const sought = 'supply pack: 6S 5000 LiPo current: 5A voltage: 24V'
    const input_W = (5 * 25.2) / 0.85
    const drawn_A = (24 - Math.sqrt(24 ** 2 - 4 * lead_ohm * input_W)) / (2 * lead_ohm)
    const found = await ask(`${sought} ${lead}`)
    // A fifth more, in tenths.
    expect(value(found, 'supplyCurrent24V')).toBeCloseTo(Math.ceil(drawn_A * 12) / 10, 9)
  })
})

describe('in plain words', () => {
  const told = 'by a lead of AWG 18, 5m long'

  it.each([
    ['what current for a 4S 1500 LiPo from a 12V 10A supply through 5 m of AWG 18', 'setCurrent'],
    ['how long does a 4S 1500 LiPo take from a 12V 10A supply over 5m of AWG 18 wire', 'chargeTime'],
    ['what supply do I need to charge a 6S 5000 LiPo at 5A through 5 m of AWG 18', 'usbSupply'],
    ['what can a 12V 10A supply carry on a 0.1-10A by 0.1 200W charger through 5 m of AWG 18', 'supplyPower'],
    ['plan six 4S 1500 LiPo on two 0.1-10A by 0.1 200W chargers, 12V 10A supply, 5 m of AWG 18 lead', 'packsReady'],
  ])('%s: it is a part of the charge', async (question, key) => {
    const reply = await ask(question)
    expect(value(reply, key)).toBeGreaterThan(0)
    expect(reply.readAs).toContain(told)
  })

  it.each([
    ['is 5 m of AWG 18 enough to charge a 4S 1500 LiPo from a 12V 10A supply', 'drop'],
    ['how many volts do I lose over 5 m of AWG 18 at 10A charging a 4S 1500 LiPo', 'drop'],
    ['how many amps does 5 m of AWG 18 carry to my 4S 1500 LiPo charger', 'fuse'],
  ])('%s: it is asked about itself', async (question, key) => {
    expect(value(await ask(question, otherMember), key)).toBeGreaterThan(2)
  })

  it('is said not to count where nothing is told whose volts it takes', async () => {
    for (const fed of ['', ' source: power bank 74Wh PD 45W', ' source: 12V 10A gauge: AWG 18']) {
      const whole = fed.includes('gauge') ? '' : ` ${lead}`
      expect((await ask(`current pack: 3S 2200 LiPo${fed}${whole}`)).assumed.join()).toContain(
        'the lead is not counted',
      )
    }
    expect((await ask(`current pack: 3S 2200 LiPo source: 12V 10A ${lead}`)).assumed.join()).not.toContain(
      'not counted',
    )
    expect(faults).toEqual([])
  })
})
