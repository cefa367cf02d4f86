// Cells that somebody says lie apart, asked as people ask: no charge passes that over.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, askingOf } from '../../support/ask.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
beforeEach(async () => {
  asking = await askingOf(commands)
})
afterEach(() => endFaultless(asking))
const spaced = (text: string): string => text.replaceAll(/\s/g, ' ')

describe('cells far apart', () => {
  it.each([
    'what current for a 3S 1300 LiPo, the cells are 0.3 V apart',
    'can i charge a 3S 1300 LiPo with cells 0.3 V apart',
    'my 3S 1300 LiPo has 0.3 V between the cells, how long does it take at 1A',
    'how many 3S 1300 LiPo can a 4S 5000 Li-ion charge, their cells are 0.3 V apart',
    'storage pack: 3S 1300 LiPo from: 3.6V per cell apart: 0.3V',
    'plan two 3S 1300 LiPo with two 80W chargers, one has its cells 0.3 V apart',
  ])('are not charged: %s', async text => {
    const { verdict, headline } = await asking.ask(text)
    expect([verdict, spaced(headline)]).toEqual(['do not charge', expect.stringContaining('the cells are 0.3 V apart')])
  })

  it('stay uncharged, whatever is asked of the pack next', async () => {
    await asking.ask('what current for a 3S 1300 LiPo, the cells are 0.3 V apart')
    expect((await asking.ask('how long at 1A')).verdict).toBe('do not charge')
  })
})

describe('cells a little apart', () => {
  it('are charged gently, and the minutes of the balancer are told with what they come from', async () => {
    const reply = await asking.ask('3S 1300 LiPo from 3.75 V, cells 40 mV apart, balancer 200 mA, how long')
    expect(reply.question).toBe('time pack: 3S 1300mAh LiPo from: 3.75V per cell apart: 0.04V balance: 0.2A')
    const figure = (key: string) => reply.figures.find(one => one.key === key)?.value ?? 0
    expect(figure('setCurrent')).toBe(0.65)
    expect(figure('balancingTime')).toBeGreaterThan(600)
    expect(figure('chargeTime')).toBeGreaterThan(figure('timeToCutoff') + figure('balancingTime'))
    expect(reply.cautions.map(({ key }) => key)).toContain('cellsUneven')
    const working = spaced(reply.working.join(' '))
    expect(working).toMatch(/Stages: .*, balancing \d+ min\./)
    expect(working).toMatch(/Balancing: the charge between 3\.77 V and 3\.73 V at rest .* ÷ 0\.2 A = \d+ min/)
    expect(reply.assumed.join()).not.toContain('balancer')
  })

  it('keep what was read of them in what is tapped next', async () => {
    const { followUps } = await asking.ask('cells pack: 3S 1300 LiPo volts: 3.70 3.75 3.72 balance: 0.2A')
    const read = '3S 1300mAh LiPo from: 3.723V per cell apart: 0.05V'
    expect(followUps.map(({ question }) => question)).toEqual([
      `current pack: ${read}`,
      `time pack: ${read} balance: 0.2A`,
    ])
    const even = await asking.ask('cells pack: 3S 1300 LiPo volts: 3.70 3.71 3.72')
    expect(even.followUps[0]?.question).toBe('current pack: 3S 1300mAh LiPo from: 3.71V per cell')
  })

  it('are balanced with the usual current where none is told, out loud', async () => {
    const { assumed } = await asking.ask('time pack: 3S 1300 LiPo from: 3.75V apart: 0.04V')
    expect(spaced(assumed.join())).toContain('the balancer bleeds 0.1 A')
  })

  it('are told what goes with them where more is asked for', async () => {
    const { cautions } = await asking.ask('time pack: 3S 1300 LiPo current: 1.3A apart: 0.05V')
    const text = spaced(cautions.map(one => one.text).join(' '))
    expect(text).toContain('cells so far apart go with 0.5C at most')
    expect(text).not.toContain('only for packs whose label allows it')
  })
})
