// Ways past the rules by how a state is told that were open once, each closed by a test through the assistant.

import { describe, expect, it } from 'vitest'
import { chemistries } from '../../../src/charging/things/chemistries.ts'
import { restingVoltage } from '../../../src/charging/things/curve.ts'
import { askTold, keys } from '../../support/ask-told.ts'
import { designOf } from '../../support/design.ts'

const { ask, said } = await askTold()

describe('a board with a cell far too low', () => {
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
  for (const chemistry of chemistries) {
    const { name } = chemistry
    const low_V = designOf(chemistry).damage_V + 0.1
    // Bare numbers below 2 are no volts.
    const ways = notations.filter(([way]) => low_V >= 2 || way !== 'no unit')
    it.each(ways)(`is refused for ${name} by %s`, async (_, written) => {
      const pack = `3S 850 ${name}`
      const volts = written(low_V)
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

it('the care for warm cells is the same where percent and volts tell the same start', async () => {
  const asked = (from: string) => ask(`current pack: 2S 12000mAh LiPo from: ${from} temperature: 36°C`)
  expect((await asked('23%')).verdict).toBe('go with care')
  expect((await asked('3.70824V per cell')).verdict).toBe('go with care')
})
