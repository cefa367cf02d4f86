// Ways past the rules that were open once, each closed by a test through the assistant.

import { beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Reply } from '../../../src/assistant/reply.ts'
import { chemistries } from '../../../src/charging/things/chemistries.ts'
import { restingVoltage } from '../../../src/charging/things/curve.ts'
import { english } from '../../../src/ground/locale.ts'
import { dangerWords } from '../../../src/handbook/rules/dangers.words.ts'
import { type Asking, askingOf } from '../../support/ask.ts'
import { folded, shortestTextsOf, textsOf } from '../../support/rendered-text.ts'
import { allDangers, allDoubts } from '../../support/situations.ts'
import { type ToldAround, under } from '../../support/under.ts'

const nothingTold: ToldAround = { dangers: [], doubts: [] }
let told = nothingTold
let asking: Asking

beforeAll(async () => {
  asking = await askingOf(under(commands, () => told))
})

/** Asked with nothing told around it, and perhaps not understood. */
async function said(question: string): Promise<Reply> {
  told = nothingTold
  return asking.ask(question)
}

/** Asked and understood. */
async function ask(question: string, around = nothingTold): Promise<Reply> {
  told = around
  const reply = await asking.ask(question)
  expect(asking.faults).toEqual([])
  expect(reply.problem, question).toBeUndefined()
  return reply
}

const keys = ({ cautions }: Reply) => cautions.map(({ key }) => key)

describe('a board with a cell far too low', () => {
  const low: Readonly<Record<string, number>> = { LiPo: 2.8, LiHV: 2.8, 'Li-ion': 2.6, LiFe: 2.3 }
  const notations: readonly (readonly [string, (volts: number) => string])[] = [
    ['volts of a cell', volts => `${volts}V per cell`],
    ['millivolts of a cell', volts => `${volts * 1000} mV per cell`],
    ['volts of the pack', volts => `${(volts * 3).toFixed(2)}V pack`],
    ['volts that can only be those of the pack', volts => `${(volts * 3).toFixed(2)}V`],
    ['a decimal comma', volts => `${String(volts).replace('.', ',')} V per cell`],
    ['no unit', volts => String(volts)],
    [
      'wide digits',
      volts => `${String(volts).replace(/\d/g, digit => String.fromCharCode(0xff10 + Number(digit)))}V per cell`,
    ],
  ]
  for (const { name } of chemistries) {
    it.each(notations)(`is refused for ${name} by %s`, async (_, written) => {
      const pack = `3S 850 ${name}`
      const volts = written(low[name] ?? 0)
      expect((await ask(`parallel packs: 2x ${pack} at ${volts}`)).verdict).toBe('do not charge')
      expect((await ask(`parallel packs: ${pack} at ${volts}; ${pack} at ${volts}`)).verdict).toBe('do not charge')
      expect((await ask(`parallel packs: ${pack} at ${volts}; 2x ${pack} at storage`)).verdict).toBe('do not charge')
    })
  }
})

describe('a state in percent is judged like the same state in volts', () => {
  const questions: readonly ((state: string) => string)[] = [
    state => `current pack: 3S 850 LiPo from: ${state}`,
    state => `time pack: 3S 850 LiPo from: ${state}`,
    state => `time pack: 3S 850 LiPo from: ${state} to: storage`,
    state => `source source: 4S 5000 Li-ion pack: 3S 850 LiPo from: ${state}`,
    state => `storage pack: 3S 850 LiPo from: ${state}`,
    state => `lend pack: 3S 850 LiPo power: 5W from: ${state}`,
    state => `percent pack: 3S 850 LiPo at: ${state}`,
    state => `parallel packs: 2x 3S 850 LiPo at ${state}`,
    state => `plan packs: 2x 3S 850 LiPo at ${state} chargers: 0.5/1/2A`,
  ]
  it.each([1, 4, 12, 30, 55, 80, 97, 100])('%i %%', async percent => {
    const volts = restingVoltage(chemistries[0], percent / 100)
    for (const question of questions) {
      const byPercent = await ask(question(`${percent}%`))
      const byVolts = await ask(question(`${volts}V per cell`))
      expect(byPercent.verdict, question(`${percent}%`)).toBe(byVolts.verdict)
      expect(keys(byPercent), question(`${percent}%`)).toEqual(keys(byVolts))
    }
  })
})

describe('no pack is stored, or brought to storage, in heat or cold that hurts it', () => {
  const states = ['', ' from: full', ' from: storage', ' from: 3.7V per cell', ' from: 20%']
  it.each(['120°C', '248°F', '-30°C', '-22°F', '−30 °C'])('at %s', async temperature => {
    for (const state of states) {
      const reply = await ask(`storage pack: 4S 1500 LiPo${state} temperature: ${temperature}`)
      expect(reply.verdict, state).toBe('do not charge')
      expect(reply.figures).toEqual([])
    }
  })
})

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

describe('a source below what the charger needs', () => {
  const charger = '0.5/1/2A 12.24-20V'
  it.each(['car 10A 9V', 'car 10A engine off rest 9V', '9V 10A', 'car 10A engine running', 'USB 5V 2A'])(
    '%s feeds no charger that starts at 12.24 V',
    async source => {
      for (const question of [
        `current pack: 3S 720 LiHV charger: ${charger} source: ${source}`,
        `time pack: 3S 720 LiHV charger: ${charger} source: ${source}`,
        `source source: ${source} pack: 3S 720 LiHV charger: ${charger}`,
        `supply source: ${source} charger: ${charger}`,
        `supply source: ${source} pack: 3S 720 LiHV charger: ${charger}`,
      ])
        expect((await ask(question)).verdict, question).toBe('do not charge')
      const plan = await ask(`plan packs: 2x 3S 720 LiHV chargers: ${charger} sources: ${source}`)
      expect(plan.verdict).toBe('do not charge')
    },
  )
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
  it.each(slow)('above 4 h: %s', async question => {
    const { verdict, headline } = await ask(question)
    expect(verdict).toBe('go with care')
    expect(headline).toMatch(/^This takes up to (4 h|[5-9] h|1[01] h).*more than 4 h/)
  })

  const endless = [
    'time pack: 6S 20000 LiPo current: 1A',
    'current pack: 6S 20000 LiPo charger: 1A',
    'source source: PD 65W pack: 6S 20000 LiPo charger: 1A',
    'storage pack: 6S 30000 LiPo from: 3.4V per cell charger: 0.7A',
    'parallel packs: 2x 6S 10000 LiPo at 3.6V per cell charger: 1A',
    'plan packs: 6S 20000 LiPo chargers: 1A',
    'lend pack: 6S 20000 LiPo power: 10W',
  ]
  it.each(endless)('above 12 h: %s', async question => {
    const { verdict, headline } = await ask(question)
    expect(verdict).toBe('go with care')
    expect(headline).toMatch(/^This takes up to .* more than 12 h/)
  })
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

describe('nothing cuts what must be said', () => {
  const locale = english('.')
  const lines = dangerWords(locale) as unknown as Readonly<Record<string, () => readonly string[]>>

  it('of all dangers at once each is named on every surface', async () => {
    const reply = await ask('time pack: 3S 720 LiHV from: 2.8V per cell temperature: 3°C current: 20A', {
      dangers: allDangers,
      doubts: allDoubts,
    })
    expect(reply.verdict).toBe('do not charge')
    for (const [surface, text] of Object.entries(shortestTextsOf(reply)))
      for (const danger of allDangers) expect(text, surface).toContain(folded(lines[danger]?.()[0] ?? '?'))
  })

  it('of all that a charge may still be done with each line is said on every surface', async () => {
    const musts = ['tooLow', 'crashed', 'storedFull', 'drainsSource', 'sealedBox', 'loose', 'disposal'] as const
    const reply = await ask('time pack: 6S 20000 LiPo 50C from: 2.8V per cell temperature: 3°C current: 0.5A', {
      dangers: musts,
      doubts: allDoubts,
    })
    expect(reply.verdict).not.toBe('go')
    for (const [surface, text] of Object.entries(shortestTextsOf(reply)))
      for (const danger of musts)
        for (const line of lines[danger]?.() ?? []) expect(text, surface).toContain(folded(line))
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

describe('a pack without a charger between it and its source', () => {
  it.each([
    'current pack: 3S 720 LiHV source: 12V 5A',
    'time pack: 3S 720 LiHV source: car 10A',
    'source source: 4S 5000 Li-ion pack: 3S 720 LiHV',
    'supply source: PD 65W pack: 3S 720 LiHV',
    'parallel packs: 2x 3S 720 LiHV at 3.8V per cell',
    'lend pack: 3S 720 LiHV power: 5W',
  ])('is refused where the words tell of it: %s', async question => {
    const reply = await ask(question, { dangers: ['noCharger'], doubts: [] })
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toMatch(/^Never connect a pack to a supply/)
  })

  it.each([
    'can I charge my 3S 720 LiHV straight from a 12V supply without a charger',
    'how long for a 3s 720 lihv hooked straight to a 13V solar panel, no charger',
  ])('is refused in plain words: %s', async question => {
    expect((await said(question)).verdict).toBe('do not charge')
  })
})

describe('a danger among the details of a question in notation', () => {
  it.each([
    'time pack: 3S 720 LiHV swollen',
    'time my puffed pack: 3S 720 LiHV',
    'current pack: 3S 720 LiHV puffed charger: 0.5/1/2A',
    'storage pack: 3S 720 LiHV dented from: full',
    'time pack: 3S 720 LiHV from: wet',
    'parallel packs: 3S 720 LiHV leaking at 3.8V; 3S 720 LiHV at 3.8V',
    'plan packs: 6S 1300 LiPo smoking chargers: 1A',
    'travel packs: 2x 3S 720 LiHV swollen',
  ])('is no word that cannot be placed: %s', async question => {
    const reply = await said(question)
    expect(reply.verdict).toBe('do not charge')
    expect(reply.figures).toEqual([])
  })

  it('names of gear are names', async () => {
    expect((await said('kit save name: fire pack: 3S 720 LiHV')).verdict).not.toBe('do not charge')
  })
})

describe('0 % and "dead" tell too little', () => {
  const questions: readonly ((state: string) => string)[] = [
    state => `current pack: 3S 850 LiPo from: ${state}`,
    state => `time pack: 3S 850 LiPo from: ${state}`,
    state => `source source: 4S 5000 Li-ion pack: 3S 850 LiPo from: ${state}`,
    state => `storage pack: 3S 850 LiPo from: ${state}`,
    state => `storage chemistry: LiPo from: ${state}`,
    state => `lend pack: 3S 850 LiPo power: 5W from: ${state}`,
    state => `parallel packs: 2x 3S 850 LiPo at ${state}`,
    state => `plan packs: 2x 3S 850 LiPo at ${state} chargers: 0.5/1/2A`,
    state => `log charge name: wren put-back: 640mAh from: ${state}`,
  ]
  it.each(['0%', '0 %', '0,0 percent', '0.4%', 'dead', 'completely dead'])('%s', async state => {
    for (const question of questions) {
      const reply = await said(question(state))
      expect(reply.problem?.what, question(state)).toMatch(/volts/)
      expect(reply.figures).toEqual([])
      expect(reply.verdict).not.toBe('go')
    }
  })
})
