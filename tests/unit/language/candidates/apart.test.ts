// How far cells lie apart, and where a charger ends, in other words than their own.

import { describe, expect, it } from 'vitest'
import { commands } from '../../../../commands/index.ts'
import { createRegistry } from '../../../../src/assistant/registry.ts'
import { bestCover, candidatesOf } from '../../../../src/language/candidates/index.ts'
import { fitTo } from '../../../../src/language/reading/fit.ts'
import { coveredTexts } from '../../../support/covered.ts'

const { vocabulary } = createRegistry(commands)
const fitted = (name: string, text: string) => {
  const command = vocabulary.find(one => one.name === name)
  if (!command) throw new Error(`no command ${name}`)
  return fitTo(command, bestCover(candidatesOf(text)))
}

describe('how far cells lie apart', () => {
  it.each([
    ['its cells are 0.3 V apart', '0.3V'],
    ['cells 40 mV apart', '0.04V'],
    ['0,06 volts between the cells', '0.06V'],
    ['the cells differ by 0.25', '0.25V'],
    ['one cell is 0.2 V lower than the others', '0.2V'],
    ['one cell is 120mV below the rest', '0.12V'],
    ['cell 3 is 0.12 V lower, what now', '0.12V'],
    ['the difference between highest and lowest cell is 0.25 V', '0.25V'],
    ['it is 50 mV out of balance', '0.05V'],
    ['out of balance by 0.15 V', '0.15V'],
    ['the cells drifted 0.25 V apart', '0.25V'],
  ])('is told by %j', (text, volts) => expect(coveredTexts(text, 'apart')).toEqual([volts]))

  it.each([
    'the packs are 0.3 V apart',
    'LiHV ends 0.15 V higher than LiPo',
    'LiHV cells end 0.15 V higher than LiPo',
    'all cells are within 0.2 V of full',
    'are the cells done within 0.5 h',
    'the cells differ by 0.5 % or so',
    'one cell is at 3.7 V',
    'one cell is 3.2 V lower',
    'from 3.7 V a cell, 0.3 V apart from the other pack',
  ])('but not by %j', text => expect(coveredTexts(text, 'apart')).toEqual([]))

  it('is a detail of what charges, is nothing new beside volts cell by cell, and is not passed over elsewhere', () => {
    const text = '3S 1300 LiPo, the cells are 0.3 V apart'
    for (const name of ['time', 'current', 'source', 'storage'])
      expect([name, fitted(name, text).options.apart]).toEqual([name, '0.3V'])
    expect(fitted('cells', '3.70 3.75 3.72 lipo, the cells are 0.05 V apart').left).toEqual([])
    expect(fitted('travel', text).left.map(({ kind }) => kind)).toEqual(['apart'])
  })

  it('goes with the current of a balancer, which no other current is', () => {
    expect(fitted('time', '3S 1300 LiPo at 1A, balancer 200 mA')).toMatchObject({
      options: { current: '1A', balance: '0.2A' },
      left: [],
    })
    expect(fitted('time', '3S 1300 LiPo, it balances with 0.3 A').options).toMatchObject({ balance: '0.3A' })
    expect(fitted('time', '2S 450 LiPo at 0.4A').options).toMatchObject({ current: '0.4A' })
    expect(fitted('cells', '3.70 3.75 3.72 lipo at 0.2A').options.balance).toBe('0.2A')
  })
})

describe('where a charger ends', () => {
  it.each([
    ['my charger stops at C/20, 3S 1300 LiPo at 1A', 'C/20'],
    ['3S 1300 LiPo at 1A, it ends at 50 mA', '0.05A'],
    ['3S 1300 LiPo at 1A, the charger cuts off at C/10', 'C/10'],
    ['3S 1300 LiPo at 1A, it ends at a twentieth of the current', 'a twentieth'],
    ['3S 1300 LiPo at 1A, the charger stops at a tenth', 'a tenth'],
    ['3S 1300 LiPo at 1A, the charger stops at a twentieth of the capacity', 'C/20'],
    ['3S 1300 LiPo at 1A, termination at 5 %', 'a twentieth'],
    ['3S 1300 LiPo at 1A, it stops at 10 % of the current', 'a tenth'],
    ['3S 1300 LiPo at 1A, the charger stops by its timer after 45 min', '45 min'],
    ['3S 1300 LiPo at 1A, the charger steps the current down at the end', 'steps'],
    ['3S 1300 LiPo at 1A, it halves its current at the end', 'steps'],
    ['3S 1300 LiPo at 1A, its timer stops it after 1.5 h', '1.5 h'],
  ])('is told by %j', (text, until) => {
    const { options, left } = fitted('time', text)
    expect([options.current, options.until, options.or, left]).toEqual(['1A', until, undefined, []])
  })

  it.each([
    '3S 1300 LiPo at 1A, it always stops at 120 min',
    '3S 1300 LiPo at 1A, the last 10 % at the end',
    '3S 1300 LiPo at 1A, the flight ends at 10 %',
  ])('but not by %j', text => expect(fitted('time', text).options.until).toBeUndefined())
})
