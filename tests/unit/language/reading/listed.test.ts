import { describe, expect, it } from 'vitest'
import { commands } from '../../../../commands/index.ts'
import { createRegistry } from '../../../../src/assistant/registry.ts'
import { bestCover, candidatesOf } from '../../../../src/language/candidates/index.ts'
import { readPlainly } from '../../../../src/language/conversation/read-plainly.ts'
import { fitTo } from '../../../../src/language/reading/fit.ts'
import type { CommandWords } from '../../../../src/language/sentence/vocabulary.ts'
import { covered } from '../../../support/covered.ts'

const { vocabulary } = createRegistry(commands)
const fitted = (name: string, text: string) => {
  const command = vocabulary.find(one => one.name === name)
  if (!command) throw new Error(`no command ${name}`)
  return fitTo(command, bestCover(candidatesOf(text)))
}

describe('packs of a sentence', () => {
  it.each([
    ['two 4S 850 LiHV, one rests at 3.71 and the other at 3.76', '4S 850mAh LiHV at 3.71V; 4S 850mAh LiHV at 3.76V'],
    [
      'one 3S 1200 LiPo at 11.42 and four at 11.38',
      '3S 1200mAh LiPo at 11.42V pack; 4x 3S 1200mAh LiPo at 11.38V pack',
    ],
    ['four 2S 600 LiPo, flown one after the other, all at 7.6', '4x 2S 600mAh LiPo at 7.6V pack'],
    ['five 2S 600 LiPo, all of them between 3.66 and 3.7', '2S 600mAh LiPo at 3.66V; 4x 2S 600mAh LiPo at 3.7V'],
    ['7x 1S 380 LiHV, five at 3.6 and two at 3.64', '5x 1S 380mAh LiHV at 3.6V; 2x 1S 380mAh LiHV at 3.64V'],
    [
      '3S 950 lipo on the board: 3.81, 3.80, 3.82',
      '3S 950mAh LiPo at 3.81V per cell; 3S 950mAh LiPo at 3.80V per cell; 3S 950mAh LiPo at 3.82V per cell',
    ],
    ['a 5S 2700 and a 5S 3100 lipo, both at 3.8', '5S 2700mAh LiPo at 3.8V; 5S 3100mAh LiPo at 3.8V'],
    ['4S 2600 LiPo at 15.4, 4S 2600 LiPo at 15.6', '4S 2600mAh LiPo at 15.4V pack; 4S 2600mAh LiPo at 15.6V pack'],
    ['four 3S 1800 LiPo, three at 3.7', '3x 3S 1800mAh LiPo at 3.7V; 3S 1800mAh LiPo'],
    ['6S 1200 LiPo, four of them, to be full', '4x 6S 1200mAh LiPo'],
    ['6S 1200 LiPo x 4', '4x 6S 1200mAh LiPo'],
  ])('with where each stands: %j', (text, packs) => {
    expect(fitted('parallel', text).options.packs).toBe(packs)
  })

  it('are of a type that is told once', () => {
    expect(fitted('plan', 'two 2S 700 and a 3S 900, all lihv, on a 60W charger').options.packs).toBe(
      '2x 2S 700mAh LiHV; 3S 900mAh LiHV',
    )
    expect(fitted('plan', 'two 2S 700 and a 3S 900 on a 60W charger').doubts).toEqual(['chemistryAssumed'])
  })

  it.each([
    ['900 and 950 5s', '5S 900mAh LiPo; 5S 950mAh LiPo'],
    ['a 900 and two 950, all 5s lihv', '5S 900mAh LiHV; 2x 5S 950mAh LiHV'],
    ['a 900, a 3S 950 and a 5S 950', '1S 900mAh LiPo; 3S 950mAh LiPo; 5S 950mAh LiPo'],
    ['a 900 and a 950, one cell is low', '1S 900mAh LiPo; 1S 950mAh LiPo'],
  ])('have as many cells as are told of others, where all agree: %j', (text, packs) => {
    expect(fitted('parallel', text).options.packs).toBe(packs)
  })
})

describe('chargers of a sentence', () => {
  it.each([
    ['two 3S 900 LiPo, two chargers of 90 W', '2x 90W charger'],
    ['two 3S 900 LiPo, one charger of 120W and a small one of 40W', '120W charger; 40W charger'],
    ['two 3S 900 LiPo, the charger has two outputs of 7A', '2x 0.1-7A'],
    ['two 3S 900 LiPo, I own three chargers, one with 50 W and two with 70 W', '50W charger; 2x 70W charger'],
    ['two 3S 900 LiPo, 9A 180W', '0.1-9A by 0.1 180W'],
    ['six 3S 900 LiPo, 25W per port and three ports', '3x 25W charger'],
  ])('each counted: %j', (text, chargers) => {
    expect(fitted('plan', text).options.chargers).toBe(chargers)
  })
})

describe('packs that hang together', () => {
  const ask = (text: string) => readPlainly(text, vocabulary, undefined, [], 0)
  const optionsOf = (text: string) => {
    const meant = ask(text)
    return meant.kind === 'question' ? meant.question : undefined
  }

  it.each([
    ['four 5S 900 lipo on the parallel board at 1C, what current', { packs: '4x 5S 900mAh LiPo', current: '1C' }],
    ['seven 2S 520 lihv paralleled, 0.4A each, ok?', { packs: '7x 2S 520mAh LiHV', current: '0.4A each' }],
    [
      '3x 4S 950 lipo all at once on my 130W charger, how long',
      { packs: '3x 4S 950mAh LiPo', charger: '130W charger' },
    ],
    ['two 5S 900 lipo in par at 0.8A each, watts', { packs: '2x 5S 900mAh LiPo', current: '0.8A each' }],
    ['three 5S 900 lipo on the board at 2A from 3.72V', { packs: '3x 5S 900mAh LiPo at 3.72V', current: '2A' }],
    ['ten 3S 650 lipo on a 5 way board, how long', { packs: '10x 3S 650mAh LiPo', places: '5' }],
  ])('share a board: %j', (text, options) => {
    expect(optionsOf(text)).toMatchObject({ command: 'parallel', options })
  })

  it.each([
    ['eight 3S 650 lipo, two at a time at 0.6A, how long in all', { packs: '8x 3S 650mAh LiPo at 0.6A', ports: '2' }],
    ['nine 2S 520 lihv on three ports at 1C, when are all done', { packs: '9x 2S 520mAh LiHV at 1C', ports: '3' }],
    [
      '5S 900 lipo at 0.9A and 3S 1400 lipo at 1.4A on two outputs that share 70W, does it fit',
      { packs: '5S 900mAh LiPo at 0.9A; 3S 1400mAh LiPo at 1.4A', chargers: '70W charger', ports: '2' },
    ],
  ])('have ports of their own: %j', (text, options) => {
    expect(optionsOf(text)).toMatchObject({ command: 'plan', options })
  })

  it.each([
    ['amps for a 2S 700 and a 5S 900', { packs: '2S 700mAh LiPo; 5S 900mAh LiPo' }],
    ['what current for 2S 700 lihv, 3S 700 lihv and 5S 900 lihv at 1C', { packs: /^2S.+ at 1C; 3S.+; 5S/ }],
  ])('are charged one after another where none feeds: %j', (text, options) => {
    const question = optionsOf(text)
    expect(question).toMatchObject({ command: 'plan' })
    expect(question?.options.packs).toMatch(options.packs)
  })

  it.each([
    ['5S 900 label: max charge 4C. going 2C today, amps', { pack: '5S 900mAh LiPo 4C charge', current: '2C' }],
    ['it is a 5S, 900 mAh and 35C on it, amps', { pack: '5S 900mAh LiPo 35C' }],
    ['label: 70C discharge, 4C charge, 5S 900. I want 2C', { pack: '5S 900mAh LiPo 4C charge', current: '2C' }],
    ['somebody wants 3A on a 5s 900, fine by our rules?', { pack: '5S 900mAh LiPo', current: '3A' }],
    ['5S 900 lipo at 1A, it is down to 3.7 a cell, how long', { from: '3.7V per cell', current: '1A' }],
  ])('are told apart from what is printed, ruled and left: %j', (text, options) => {
    expect(optionsOf(text)?.options).toMatchObject(options)
  })

  it.each([
    ['after a flight one cell is at 3.46 and the others at 3.79', 'cells'],
    ['5S 900 pulls 30A avg, how long', 'energy'],
    ['can a 5S 900 be full within 50 min', 'time'],
    ['a 5S 900 full within 50 min, which amps', 'current'],
    ['5S 900 back from flying in 5 min, 70% used, charge amps', 'energy'],
  ])('are judged by what matters most: %j', (text, command) => {
    expect(optionsOf(text)?.command).toBe(command)
  })

  it('feed each other where a word says so', () => {
    expect(optionsOf('what current for a 2S 700 lipo off a 5S 4000 lipo')).toMatchObject({
      command: 'current',
      options: { pack: '2S 700mAh LiPo', source: '5S 4000mAh LiPo' },
    })
  })

  it('takes a time of day for no current', () => {
    expect(fitted('plan', 'two 5S 900 lipo, can they fly at 11').options.packs).toBe('2x 5S 900mAh LiPo')
  })

  it('counts ports anew of the charger that was told before', () => {
    const command = vocabulary.find(({ name }) => name === 'plan') as CommandWords
    const kept = { packs: '6x 5S 900mAh LiPo', chargers: '2x 90W charger' }
    expect(fitTo(command, bestCover(candidatesOf('make it 3 ports')), kept).options).toEqual({
      ...kept,
      chargers: '3x 90W charger',
    })
  })

  it('says nothing of cells in parallel, nor of another board', () => {
    expect(covered('two cells in parallel', 'board')).toEqual([])
    expect(covered('pin it on the notice board', 'board')).toEqual([])
  })

  it('keeps the packs of the question before, in another number or at other volts', () => {
    const command = vocabulary.find(({ name }) => name === 'parallel') as CommandWords
    const kept = { packs: '4x 3S 1300mAh LiPo at 3.8V per cell', current: '4A' }
    const next = (text: string) => fitTo(command, bestCover(candidatesOf(text)), kept).options.packs
    expect(next('only three, one is lent out')).toBe('3x 3S 1300mAh LiPo at 3.8V per cell')
    expect(next('all of them at 3.75')).toBe('4x 3S 1300mAh LiPo at 3.75V')
    expect(next('at 3A')).toBe(kept.packs)
  })
})

describe('watt-hours', () => {
  it('of several kinds of packs are those of a list, of one kind with its number', () => {
    expect(fitted('energy', 'three 5S 950 lipo and a 2S 520 lipo').options).toEqual({
      packs: '3x 5S 950mAh LiPo; 2S 520mAh LiPo',
    })
    expect(fitted('energy', 'three 5S 950 lipo').options).toEqual({ pack: '5S 950mAh LiPo', count: '3' })
  })
})
