import { describe, expect, it } from 'vitest'
import { amendQuestion, readQuestion } from '../../../src/language/sentence/question.ts'
import { problemOf } from './problem-of.ts'
import { vocabulary } from './vocabulary.ts'

const read = (text: string) => readQuestion(text, vocabulary)

describe('questions in plain words', () => {
  it.each([
    [
      'what current for a 3s 720 hv on a 0.5/1/2/4 A charger',
      'current',
      { pack: '3s 720 hv', charger: '0.5/1/2/4 A charger' },
    ],
    ['how long for 6s 1300 lipo at 2A from 3.6', 'time', { pack: '6s 1300 lipo', current: '2A', from: '3.6' }],
    [
      'can my 4s 5000 li-ion charge 6 of my 3s 720 lihv',
      'source',
      { source: '4s 5000 li-ion', count: '6', pack: '3s 720 lihv' },
    ],
    ['how many 3s 720 lihv from a PD 65W', 'source', { pack: '3s 720 lihv', source: 'PD 65W' }],
    ['time to charge 650 1s hv at 1A', 'time', { pack: '650 1s hv', current: '1A' }],
    [
      'i have a 2s 450 lipo and a charger with 1 2 3 5 A steps what should i set',
      'current',
      { pack: '2s 450 lipo', charger: '1 2 3 5 A steps' },
    ],
    ['Hi! What current should I use for my 3S 720mAh LiHV? Thanks', 'current', { pack: '3S 720mAh LiHV' }],
    [
      'can i charge six 3s 720 lihv with a power bank 74Wh',
      'source',
      { count: 'six', pack: '3s 720 lihv', source: 'power bank 74Wh' },
    ],
    ['how many 3s 720 lihv with my 4s 5000 li-ion', 'source', { pack: '3s 720 lihv', source: '4s 5000 li-ion' }],
    ['charge 20 3s 720 lihv: how many from 20V 5A', 'source', { count: '20', pack: '3s 720 lihv', source: '20V 5A' }],
    [
      'how many 3s 720 lihv can my 4s 5000 li-ion do from storage to full',
      'source',
      { pack: '3s 720 lihv', source: '4s 5000 li-ion', from: 'storage', to: 'full' },
    ],
    [
      'how long from 3.7V to 4.2V for 3s1p 720mAh lihv 2C 6mΩ at 1A',
      'time',
      { pack: '3s1p 720mAh lihv 2C 6mΩ', current: '1A', from: '3.7V', to: '4.2V' },
    ],
    [
      'how long for 3s 720 lihv at 1C from 11.1V on my car 10A at 12°C',
      'time',
      { pack: '3s 720 lihv', current: '1C', from: '11.1V', source: 'car 10A', temperature: '12°C' },
    ],
    ['how long for 3s 720 lihv at 1A until 0.1A', 'time', { pack: '3s 720 lihv', current: '1A', until: '0.1A' }],
    [
      'what current for a 3s 720 hv on a 0.1-10A charger from a USB-C 65W',
      'current',
      { pack: '3s 720 hv', charger: '0.1-10A charger', source: 'USB-C 65W' },
    ],
    ['how long for 3s 720 lihv on a 2A charger', 'time', { pack: '3s 720 lihv', charger: '2A charger' }],
    ['how long for 3s 720 lihv at 1A, is 3.7V now', 'time', { pack: '3s 720 lihv', current: '1A', from: '3.7V' }],
    ['when will it be done pack: 3S 720 LiHV current: 1A', 'time', { pack: '3S 720 LiHV', current: '1A' }],
  ])('reads %j', (text, command, options) => {
    expect(read(text)).toEqual({ command, options })
  })

  it.each([
    [
      'how many 6S 1300mAh lipo can i get out of a 6S 20Ah li-ion from storage',
      { pack: '6S 1300mAh lipo', source: '6S 20Ah li-ion', from: 'storage' },
    ],
    [
      'how long for 3s 720mAh/8Wh lihv at 1.5 amps, it is 41F',
      { pack: '3s 720mAh/8Wh lihv', current: '1.5 amps', temperature: '41F' },
    ],
    ['how long for 3S-720 LiHV @ 1A', { pack: '3S-720 LiHV', current: '1A' }],
    ['how long for one 6s 1300 150c lipo on my 4A charger', { pack: '6s 1300 150c lipo', charger: '4A charger' }],
  ])('reads %j', (text, options) => {
    expect(read(text).options).toEqual(options)
  })

  it.each([
    ['how long for three 3s 720 lihv in parallel at 2A', 'three', 'one pack'],
    ['what current for 2x 3s 720 lihv', '2x', 'one pack'],
    ['how long for 3s 720 lihv at 1A 12V', '12V', 'what 12V is of'],
    ['how long for 3s 720 lihv at 1A 3.7V', '3.7V', 'what 3.7V is of'],
    ['how long for 3s 720 lihv at 1/2 A', '1/2 A', 'one current or the steps'],
    ['how long for 3s 720 lipo lihv at 1A', 'lihv', 'what lihv is of'],
    ['what current for a flat 3s 720 lihv', 'flat', 'has to be measured'],
    ['what current for a 3s 720 lihv in freezing weather', 'freezing', 'temperature'],
    ['how long for 3s 720 lihv from 10.5V at 1A', '10.5V', 'those of a supply'],
  ])('asks rather than guesses: %j', (text, token, what) => {
    const problem = problemOf(() => read(text))
    expect(problem.token).toBe(token)
    expect(problem.what).toContain(what)
  })

  it('takes volts by themselves where a command knows one state only', () => {
    for (const text of ['percent lihv 3.85V', 'how full is a lihv at 3.85V', 'how full is lihv 3.85V']) {
      expect(read(text)).toEqual({ command: 'percent', options: { chemistry: 'lihv', at: '3.85V' } })
    }
  })

  it('asks no number that the sentence holds', () => {
    expect(read('how long for a flat 3s 720 lihv from 3.4V at 1A').options).toHaveProperty('from', '3.4V')
    expect(read('what current for a cold 3s 720 lihv at 5°C').options).toHaveProperty('temperature', '5°C')
  })

  it('knows a command by its name where no phrase means one', () => {
    expect(read("what's the best current for my 2S 450mAh 80C LiPo").command).toBe('current')
    expect(problemOf(() => read('the best time and current')).what).toContain('what you want to know')
  })

  it.each(['my lipo is on fire', 'the pack is smoking, what current', 'how long, it hisses'])(
    'sends for help: %j',
    text => {
      expect(problemOf(() => read(text)).what).toContain('call the fire service')
    },
  )

  it('leaves out what the sentence does not say, to be asked for', () => {
    expect(read('how long will it take')).toEqual({ command: 'time', options: {} })
    expect(read('what current for my 3s lipo')).toEqual({ command: 'current', options: { pack: '3s lipo' } })
  })

  it('says which words and quantities it did not use', () => {
    expect(read('what current for 3s 720 lihv from a zebra at 1.5A')).toEqual({
      command: 'current',
      options: { pack: '3s 720 lihv' },
      notUsed: ['1.5A', 'zebra'],
    })
  })

  it.each([
    ['how long for 3s 720 lihv at 5', '5'],
    ['how long for 3s 720 lihv at 1A 80%', '80%'],
    ['how long for 3s 720 lihv at 1,234A', '1,234'],
    ['how long for 3s 720 lihv at 1e3', '1e3'],
    ['how long for 3s 720 lihv at 400A', '400A'],
    ['what current for 99S 720 lipo', '99S'],
    ['how long for 3s 720 lihv at 1A or 2A', '1A or 2A'],
  ])('never drops a number: %j', (text, token) => {
    const { options, problem } = (() => {
      try {
        return { options: read(text).options, problem: undefined }
      } catch (error) {
        return { options: undefined, problem: error as { details: { token?: string } } }
      }
    })()
    if (options) expect(Object.values(options)).toContain(token)
    else expect(problem?.details.token).toBe(token)
  })

  it('asks which of two packs feeds the other', () => {
    const problem = problemOf(() => read('how many 3s 720 lihv 4s 5000 li-ion'))
    expect(problem.token).toBe('4s 5000 li-ion')
    expect(read(problem.example).command).toBe('source')
  })

  it('asks which of two currents is meant', () => {
    expect(problemOf(() => read('how long for 3s 720 lihv at 1A at 2A')).what).toContain('two values for current')
  })

  it.each(['puffy', 'swollen', 'punctured', 'dented', 'leaking', 'very hot', 'crashed', 'melted', 'bulging'])(
    'refuses to advise on a pack that is %s',
    sign => {
      for (const text of [`what current for my ${sign} 3s 720 lihv`, `current 3s 720 lihv, it is ${sign}`]) {
        const { what, token } = problemOf(() => read(text))
        expect(what).toContain('Do not charge')
        expect(sign).toContain(token)
      }
    },
  )

  it('reads a pack that is said to be sound, on a hot day', () => {
    for (const text of [
      'how long for 3s 720 lihv at 1A, not swollen',
      'how long for 3s 720 lihv at 1A, it is very hot outside',
    ]) {
      expect(read(text).options).toEqual({ pack: '3s 720 lihv', current: '1A' })
    }
    expect(problemOf(() => read('how long for 3s 720 lihv, not swollen but leaking')).token).toBe('leaking')
  })
})

describe('changes to an earlier question', () => {
  const earlier = read('time pack: 3S 720 LiHV current: 1A')

  it.each([
    ['at 2A', { current: '2A' }],
    ['2 A', { current: '2 A' }],
    ['from 3.6V', { from: '3.6V' }],
    ['to storage', { to: 'storage' }],
    ['storage', { to: 'storage' }],
    ['and what about storage?', { to: 'storage' }],
    ['to 80%', { to: '80%' }],
    ['on PD 45W', { source: 'PD 45W' }],
    ['on a 4S 5000 li-ion', { source: '4S 5000 li-ion' }],
    ['and with 6mΩ?', { resistance: '6mΩ' }],
    ['how about 6S 1300 lipo', { pack: '6S 1300 lipo' }],
    ['at 5°C', { temperature: '5°C' }],
    ['charger: 1/2A', { charger: '1/2A' }],
    ['at 2A from 3.6V', { current: '2A', from: '3.6V' }],
  ])('%j', (text, changed) => {
    expect(amendQuestion(earlier, text, vocabulary)).toEqual({
      command: 'time',
      options: { ...earlier.options, ...changed },
    })
  })

  it('keep nothing that was measured of a pack for another one', () => {
    const measured = read('time pack: 3S 720 LiHV resistance: 12mΩ current: 1A')
    expect(amendQuestion(measured, 'how about 6S 1300 lipo', vocabulary).options).toEqual({
      pack: '6S 1300 lipo',
      current: '1A',
    })
    expect(amendQuestion(measured, 'at 2A', vocabulary).options).toHaveProperty('resistance', '12mΩ')
  })

  it.each([
    ['80%', '80%'],
    ['at 5', '5'],
    ['thanks', 'thanks'],
    ['it got puffy', 'puffy'],
  ])('refuses %j', (text, token) => {
    expect(problemOf(() => amendQuestion(earlier, text, vocabulary)).token).toBe(token)
  })
})
