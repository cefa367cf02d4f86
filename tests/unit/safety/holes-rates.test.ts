// Ways past the rules by rates and hours that were open once, each closed by a test through the assistant.

import { describe, expect, it } from 'vitest'
import { askTold } from '../../support/ask-told.ts'
import { folded, textsOf } from '../../support/rendered-text.ts'

const { ask, said } = await askTold()

describe('a charge rate that no pack has is not believed', () => {
  it.each(['current', 'time'])('in %s', async command => {
    for (const rate of ['6C charge', '100C charge']) {
      const reply = await ask(`${command} pack: 3S 720 LiHV ${rate}`)
      expect(reply.verdict).toBe('go with care')
      expect(reply.headline).toMatch(/^\d+C is not a charge rate/)
      const set = reply.figures.find(({ key }) => key === 'setCurrent')
      expect(set?.value).toBeLessThanOrEqual(0.72)
    }
  })

  it('nor when it is asked for as a current', async () => {
    expect((await ask('time pack: 3S 720 LiHV current: 12C')).verdict).toBe('do not charge')
    const beyond = await said('time pack: 3S 720 LiHV current: 100C')
    expect(beyond.problem?.token).toBe('100C')
    expect(beyond.figures).toEqual([])
    expect((await ask('time pack: 3S 720 LiHV 100C charge current: 7.2A')).verdict).toBe('do not charge')
  })
})

describe('a charge of many hours says so first', () => {
  const slow = [
    'time pack: 6S 5000 LiPo current: 1A',
    'time pack: 6S 5000 LiPo charger: 1A',
    'current pack: 6S 5000 LiPo charger: 1A',
    'source source: PD 65W pack: 6S 5000 LiPo charger: 1A',
    'storage pack: 6S 9000 LiPo from: 3.4V per cell charger: 0.7A',
    'parallel packs: 2x 6S 2500 LiPo at 3.6V per cell charger: 1A',
    'plan packs: 6S 5000 LiPo chargers: 1A',
    'lend pack: 6S 5000 LiPo power: 10W',
  ]
  const isSlow = async (question: string, opening: RegExp) => {
    const { verdict, headline } = await ask(question)
    expect(verdict).toBe('go with care')
    expect(headline).toMatch(opening)
  }
  it.each(slow)('above 4 h: %s', question => isSlow(question, /^This takes up to (4 h|[5-9] h|1[01] h).*more than 4 h/))

  const endless = [
    'time pack: 6S 20000 LiPo current: 1A',
    'current pack: 6S 20000 LiPo charger: 1A',
    'source source: PD 65W pack: 6S 20000 LiPo charger: 1A',
    'storage pack: 6S 30000 LiPo from: 3.4V per cell charger: 0.7A',
    'parallel packs: 2x 6S 10000 LiPo at 3.6V per cell charger: 1A',
    'plan packs: 6S 20000 LiPo chargers: 1A',
    'lend pack: 6S 20000 LiPo power: 10W',
  ]
  it.each(endless)('above 12 h: %s', question => isSlow(question, /^This takes up to .* more than 12 h/))
})

describe('the large C number of a label', () => {
  it.each([
    'current pack: 3S 720 LiHV 50C',
    'time pack: 3S 720 LiHV 50C',
    'time pack: 3S 720 LiHV 50C from: 3V per cell temperature: 4°C',
    'source source: PD 65W pack: 3S 720 LiHV 50C',
    'storage pack: 3S 720 LiHV 50C from: full',
    'supply source: PD 65W pack: 3S 720 LiHV 50C charger: 0.5/1/2A 9-20V',
    'parallel packs: 2x 3S 720 LiHV 50C at 3.8V per cell',
    'plan packs: 2x 3S 720 LiHV 50C chargers: 0.5/1/2A',
    'travel packs: 3S 720 LiHV 50C',
    'lend pack: 3S 720 LiHV 50C power: 5W',
  ])('is never dropped silently: %s', async question => {
    for (const [surface, text] of Object.entries(textsOf(await ask(question)))) expect(text, surface).toContain('50C')
  })
})

describe('a charge under 0.05C is no plain go', () => {
  it.each([
    'time pack: 4S 5000 LiPo current: 0.2A',
    'time pack: 4S 5000 LiPo current: 0.04C',
    'time pack: 4S 5000 LiPo charger: 0.2A',
    'current pack: 4S 5000 LiPo charger: 0.2A',
    'source source: PD 65W pack: 4S 5000 LiPo charger: 0.2A',
    'storage pack: 4S 5000 LiPo from: 3.8V per cell charger: 0.2A',
    'parallel packs: 2x 4S 2500 LiPo at 3.9V per cell charger: 0.2A',
    'plan packs: 4S 5000 LiPo at 95% chargers: 0.2A',
    'supply pack: 4S 5000 LiPo charger: 0.2A',
  ])('%s', async question => {
    const reply = await ask(question)
    expect(reply.verdict).not.toBe('go')
    expect(folded(`${reply.headline} ${reply.cautions.map(({ text }) => text).join(' ')}`)).toMatch(/0\.04C is so slow/)
  })
})
