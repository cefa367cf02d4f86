// Shares that use has left of a pack, whichever side of them was told.

import { describe, expect, it } from 'vitest'
import { commands } from '../../../../commands/index.ts'
import { createRegistry } from '../../../../src/assistant/registry.ts'
import { bestCover, candidatesOf } from '../../../../src/language/candidates/index.ts'
import { fitTo } from '../../../../src/language/reading/fit.ts'
import { covered } from '../../../support/covered.ts'

const { vocabulary } = createRegistry(commands)
const optionsOf = (name: string, text: string) => {
  const command = vocabulary.find(one => one.name === name)
  if (!command) throw new Error(`no command ${name}`)
  return fitTo(command, bestCover(candidatesOf(text))).options
}

describe('what was used of a pack', () => {
  it.each([
    ['3S 1900 lipo, 65% used', '35%'],
    ['I spent about 70 percent of my 3S 1900', '30%'],
    ['the climb took 25% out of the 3S 1900', '75%'],
    ['3S 1900 with 80% of the pack gone', '20%'],
    ['3S 1900, ninety percent discharged', '10%'],
    ['3S 1900 drained to 45%', '45%'],
    ['two thirds gone from my 3S 1900', '33%'],
    ['used a quarter of the 3S 1900', '75%'],
  ])('leaves the rest of it: %j', (text, from) => {
    expect(optionsOf('time', text).from).toBe(from)
    expect(optionsOf('energy', text)).toMatchObject({ from })
  })

  it.each([
    'charge the 3S 1900 to 80%',
    'it has to be drained to 45%, 3S 1900',
    'the 3S 1900 took 60% in an hour',
    'we used the 80% rule, 3S 1900',
    'we use a third charger for the 3S 1900',
  ])('is not told by %j', text => {
    expect(covered(text, 'state').filter(({ remains }) => remains)).toEqual([])
  })

  it('is nothing to start from where all of it was used', () => {
    expect(optionsOf('time', '3S 1900, used 100%').from).toBe('0%')
  })

  it('is so many mAh of a flight', () => {
    expect(optionsOf('energy', 'used 40% of a 4S 1500 in 3 min').capacity).toBe('600mAh')
    expect(optionsOf('energy', '60% left after 4 min on the 4S 1500').capacity).toBe('600mAh')
  })

  it('is where a pack stands, and never where it is to go', () => {
    expect(optionsOf('energy', 'landed with 30% left, 6S 1300')).toMatchObject({ from: '30%' })
    expect(optionsOf('source', 'power bank 60Wh, 40% used, for a 3S 1300').charged).toBe('60%')
  })
})

it('a range begins where it is told to be between', () => {
  expect(optionsOf('energy', 'between 3.74 and 3.86 per cell, 3S 1900')).toMatchObject({
    from: '3.74V',
    to: '3.86V per cell',
  })
  expect(optionsOf('time', '3S 1900, between 20% and 70%')).toMatchObject({ from: '20%', to: '70%' })
})
