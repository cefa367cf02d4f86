import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readQuestion, writeQuestion } from '../../../src/language/sentence/question.ts'
import { problemOf } from './problem-of.ts'
import { vocabulary } from './vocabulary.ts'

const read = (text: string) => readQuestion(text, vocabulary)

describe('questions in notation', () => {
  const asked = { command: 'time', options: { pack: '3S 720 LiHV', current: '1A', from: '3.7V', to: 'full' } }

  it.each([
    'time pack: 3S 720 LiHV current: 1A from: 3.7V to: full',
    '/time pack: 3S 720 LiHV current: 1A from: 3.7V to: full',
    '!Time  PACK:3S 720 LiHV, current:1A; from : 3.7V\nto: full ',
  ])('reads %j', text => {
    expect(read(text)).toEqual(asked)
  })

  it('reads the options in any order', () => {
    expect(read('time to: full from: 3.7V current: 1A pack: 3S 720 LiHV')).toEqual(asked)
  })

  it('takes the longest command name, and what stands bare behind it', () => {
    expect(read('kit save wren pack: 3S 720 LiHV')).toEqual({
      command: 'kit save',
      options: { name: 'wren', pack: '3S 720 LiHV' },
    })
    expect(read('kit')).toEqual({ command: 'kit', options: {} })
    expect(read('current 3S 720 LiHV charger: 1/2A')).toEqual({
      command: 'current',
      options: { pack: '3S 720 LiHV', charger: '1/2A' },
    })
  })

  it.each([
    ['time pakc: 3S 720 LiHV', 'pakc:', 'Did you mean "pack"?'],
    ['time zebra: 3S 720 LiHV', 'zebra:', 'takes no "zebra"'],
    ['time pack: 3S 720 LiHV pack: 4S 900 LiPo', 'pack:', 'pack twice'],
    ['time 3S 720 LiHV pack: 4S 900 LiPo', '3S 720 LiHV', 'two values for pack'],
    ['tme pack: 3S 720 LiHV', 'tme', 'Did you mean "time"?'],
    ['NaN', 'NaN', 'what you want to know'],
    ['good morning', 'good morning', 'what you want to know'],
    ['3S 720 LiHV', '3S 720 LiHV', 'what you want to know'],
    ['timepiece', 'timepiece', 'what you want to know'],
    ['', undefined, 'what you want to know'],
  ])('refuses %j', (text, token, what) => {
    const problem = problemOf(() => read(text))
    expect(problem.token).toBe(token)
    expect(problem.what).toContain(what)
  })

  it('refuses what is too long to be a question', () => {
    const problem = problemOf(() => read(`time pack: ${'3'.repeat(20_000)}`))
    expect(problem.what).toBe('That is 20011 characters long.')
    expect(problem.token?.length).toBeLessThan(50)
  })

  it('writes a question so that it reads the same', () => {
    const value = fc
      .array(fc.constantFrom('3S', '720', 'LiHV', '0,5', 'A', 'wren', '20%', 'PD', 'é', '😀'), {
        minLength: 1,
        maxLength: 5,
      })
      .map(words => words.join(' '))
    const question = fc
      .constantFrom(...vocabulary)
      .chain(({ name, options }) =>
        fc.record({
          command: fc.constant(name),
          options: fc.record(Object.fromEntries(options.map(option => [option.name, value])), {
            requiredKeys: [],
          }) as fc.Arbitrary<Record<string, string>>,
        }),
      )
    fc.assert(
      fc.property(question, asked => {
        expect(read(writeQuestion(asked))).toEqual(asked)
      }),
    )
  })
})
