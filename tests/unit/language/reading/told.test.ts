import { describe, expect, it } from 'vitest'
import { commands } from '../../../../commands/index.ts'
import { createRegistry } from '../../../../src/assistant/registry.ts'
import { bestCover, candidatesOf } from '../../../../src/language/candidates/index.ts'
import { fitTo } from '../../../../src/language/reading/fit.ts'

const { vocabulary } = createRegistry(commands)
const fitted = (name: string, text: string) => {
  const command = vocabulary.find(one => one.name === name)
  if (!command) throw new Error(`no command ${name}`)
  return fitTo(command, bestCover(candidatesOf(text)))
}

describe('how many cells', () => {
  it('are as many as were read', () => {
    expect(fitted('cells', '4.18 4.17 4.12 4.18 on the 1900 lipo').options.pack).toBe('4S 1900mAh LiPo')
    expect(fitted('health', '7 8 15 mohm, a 2400 lipo').options.pack).toBe('3S 2400mAh LiPo')
    expect(fitted('health', '7 8 15 mohm')).toMatchObject({ missing: undefined, options: { chemistry: '3S LiPo' } })
  })

  it('are told one by one', () => {
    expect(fitted('cells', 'one cell is 3.91 and the other three 3.97').options.volts).toBe('3.91 3.97 3.97 3.97')
    expect(fitted('cells', '4S lihv with one at 3.71 and the others 3.94').options.volts).toBe('3.71 3.94 3.94 3.94')
    const { volts, chemistry } = fitted('cells', 'two cells at 3.81 and one at 3.64 on my 3S').options
    expect([volts, chemistry]).toEqual(['3.81 3.81 3.64', '3S LiPo'])
    expect(fitted('cells', 'two cells say 3.74, the third 3.41').options.volts).toBe('3.74 3.74 3.41')
    expect(fitted('cells', 'cell 3 is 3.61, rest 3.80').options.volts).toBe('3.80 3.80 3.61')
    expect(fitted('cells', '4S, lowest 3.71 and highest 3.78').options.volts).toBe('3.71 3.78 3.78 3.78')
    expect(fitted('cells', '3.88 and 3.93, lihv').options).toEqual({ volts: '3.88 3.93', chemistry: '2S LiHV' })
  })

  it('are those that volts of the whole pack fit, where only volts matter', () => {
    const { options, doubts } = fitted('percent', 'what percent is 18.9V lipo')
    expect(options).toEqual({ at: '18.9V pack', chemistry: '5S LiPo' })
    expect(doubts).toEqual(['cellsByVolts'])
  })

  it('are asked back where volts fit several, or something is charged', () => {
    expect(fitted('percent', 'lipo at 25.1V, what percent').missing).toEqual({ cells: [6, 7] })
    expect(fitted('time', 'a 1700 lipo at 11.3V to full').missing).toEqual({ cells: [3] })
    expect(fitted('time', 'a 1700 lipo at 11.3V to full').options.pack).toBeUndefined()
  })
})

describe('a capacity without its unit', () => {
  it.each([
    ['3S 2.4 lipo', '3S 2400mAh LiPo'],
    ['five cell 4,5 lipo', undefined],
    ['3S lipo at 2.4', undefined],
    ['3S lihv 3.9', undefined],
  ])('is Ah beside the cells, where it cannot be volts or amps: %j', (text, pack) => {
    expect(fitted('current', text).options.pack).toBe(pack)
  })

  it.each([
    ['my label reads 1400 milliamps 3 cell lipo', '3S 1400mAh LiPo'],
    ['2S lihv, 1.1 mah', '2S 1100mAh LiHV'],
    ['3S lipo at 600 mA', undefined],
    ['the van battery cranks with 550 amps, 3S lipo', undefined],
    ['4S, set 1500 mA', undefined],
  ])('with a wrong one is what labels print, unless it is to be set: %j', (text, pack) => {
    expect(fitted('current', text).options.pack).toBe(pack)
  })

  it('is said', () => {
    expect(fitted('current', '3S 2.4 lipo').doubts).toEqual(['notUnderstood'])
    expect(fitted('current', '3S 1.4 mah lipo').doubts).toEqual(['notUnderstood'])
  })
})

it('volts of a label count the cells before a capacity, also without their unit', () => {
  expect(fitted('current', 'what amps for 22.2 4000').options.pack).toBe('6S 4000mAh LiPo')
  expect(fitted('current', 'rests at 14.8 1500 lipo').missing).toEqual({ cells: [4] })
})

it('what is to be set may be told in the mA of the label', () => {
  expect(fitted('time', '3S 1800 lipo at 1800').options.current).toBe('1.8A')
  expect(fitted('time', '3S 1800 lipo set 900').options.current).toBe('0.9A')
  expect(fitted('time', '3S 1800 lipo at 9000').options.current).toBeUndefined()
})

it('so little of each pack is a current, and no volts of a cell', () => {
  expect(fitted('parallel', 'five 1S 350 lipo on the board, 0.35 each').options.current).toBe('0.35A each')
  expect(fitted('percent', '3S lipo, 0.9 V each').options.at).toBe('0.9V per cell')
})

it('12 or 24 V with some Ah are a lead battery, whatever it came out of', () => {
  const source = (text: string) => fitted('source', text).options.source
  expect(source('from a 12V 9Ah gate battery, 3S 1300 lipo')).toMatch(/^lead battery.*9Ah/)
  expect(source('24V 30Ah, 3S 1300 lipo')).toMatch(/^lead battery.*24V.*30Ah/)
  expect(source('12V 2Ah, 3S 1300 lipo')).toBeUndefined()
})

describe('the size of a round cell', () => {
  it('is no capacity', () => {
    expect(fitted('current', '2S 18650 li-ion').missing).toBe('capacity')
    // No LiPo comes in round cells.
    expect(fitted('current', '3s1p 21700 4500').options.pack).toBe('3S 4500mAh Li-ion')
    expect(fitted('current', '3s1p 21700 4500').doubts).toContain('chemistryAssumed')
    expect(fitted('current', '5S2P from 21700s, 4500 mAh a cell').options.pack).toBe('5S2P 9000mAh Li-ion')
    expect(fitted('current', '5S2P of 21700 4500').options.pack).toBe('5S2P 9000mAh Li-ion')
    expect(fitted('current', 'one 21700 with 4800 mAh li-ion').options.pack).toBe('1S 4800mAh Li-ion')
  })
})

describe('where a pack stands', () => {
  it('is told by a number before a word', () => {
    expect(fitted('percent', 'how full is 3.77').options.at).toBe('3.77V')
    expect(fitted('percent', 'at storage since may, reads 3.81 now').options.at).toBe('3.81V')
    expect(fitted('storage', '3S 900 lipo 4.1 to 3.85').options.from).toBe('4.1V')
  })
})

describe('what a charger and a meter show', () => {
  it.each([
    ['my tester says 12.41 where the charger claims 12.57', { shown: '12.57V pack', measured: '12.41V pack' }],
    ['16.71 on the display, 16.62 on a good multimeter', { shown: '16.71V', measured: '16.62V' }],
    ['charger 8.37 meter 8.31', { shown: '8.37V', measured: '8.31V' }],
  ])('each on its side: %j', (text, readings) => {
    expect(fitted('trim', text).options).toMatchObject(readings)
    expect(fitted('trim', text).options.chemistry).toMatch(/^[2-4]S LiPo$/)
  })
})

describe('two packs that contradict each other', () => {
  it('feed each other only where both are told whole', () => {
    const { options, left } = fitted('current', '6S 4400 lipo for my 600')
    expect(options).toEqual({ pack: '6S 4400mAh LiPo' })
    expect(left.map(({ typed }) => typed)).toEqual(['600'])
  })
})

it('a car and its battery told apart are one source', () => {
  const { options } = fitted('source', 'from the car, its battery says 75 Ah, engine off. how many 4S 1300 lipo')
  expect(options).toEqual({ source: 'car engine off 75Ah', pack: '4S 1300mAh LiPo' })
})

it('a resistance that grew is the larger now, whichever was told first', () => {
  const grown = { resistance: '15mΩ', new: '4mΩ' }
  expect(fitted('health', 'cell 3 went from 4 to 15 mohm').options).toMatchObject(grown)
  expect(fitted('health', 'cell 3 has 15 mohm, it was 4 mohm, the others 5 mohm').options).toMatchObject(grown)
})

describe('volts under load', () => {
  it.each([
    'sagged to 2.9 a cell in the climb, now they rest at 3.52 a cell',
    'they rest at 3.52 a cell, under load it was 2.9 a cell',
    'dipped to 2.9 in flight, 3.52 an hour later',
  ])('are not where a pack stands: %s', text => {
    expect(fitted('percent', text).options.at).toMatch(/^3\.52V/)
  })

  it('are that where none at rest are told', () => {
    expect(fitted('percent', 'it sagged to 2.9 a cell in flight').options.at).toBe('2.9V per cell')
  })
})

it('of a flight a share is what may be used or stays, but for a start', () => {
  const levels = (text: string) => {
    const { from, to } = fitted('energy', text).options
    return { from, to }
  }
  expect(levels('900 mAh in 4 min with a 4S 1300, 80% is the limit')).toEqual({ from: undefined, to: '80%' })
  expect(levels('20 A from 90% with a 4S 1300')).toEqual({ from: '90%', to: undefined })
})

it('what a fuse is made for is not what a lead carries', () => {
  expect(fitted('lead', 'is a 30 A fuse right for a charger that draws 12 A').options.current).toBe('12A')
  expect(fitted('lead', 'a lead with a 30 A fuse').options.current).toBe('30A')
})

it('slots and sockets of a charger are its outlets', () => {
  expect(fitted('plan', 'ten 1S 550 lipo on a charger with five slots').options.ports).toBe('5')
  expect(fitted('parallel', 'ten 1S 550 lipo on a board with five slots').options.places).toBe('5')
})

it('less than no current is handed on, for its reader to refuse', () => {
  expect(fitted('current', 'charge the 4S 1300 with -2 A').options.current).toBe('-2A')
  expect(fitted('current', 'a 4S 1300 - 2 A').options.current).toBe('2A')
})

describe('what was used of a pack', () => {
  it('stays what it is where it is weighed', () => {
    expect(fitted('percent', 'used 800 mAh of my 4S 1250 lipo').options.back).toBe('800mAh')
    expect(fitted('energy', 'used 800 mAh in 4 min, 4S 1250 lipo').options.capacity).toBe('800mAh')
  })
})

it('so long as it was flown is no time that a charge has', () => {
  expect(fitted('time', 'flew 7 min, 4S 1300 lipo at 3.7 a cell').options.within).toBeUndefined()
  expect(fitted('time', '4S 1300 lipo in 45 min').options.within).toBe('45min')
})

it('so long after a flight is no time that a charge has', () => {
  expect(fitted('time', '4S 1300 lipo at 3.7 a cell half an hour after landing').options.within).toBeUndefined()
})

it('volts of a label tell a type that is charged more gently, and of counted cells where they stand', () => {
  expect(fitted('current', '9.9V 2100').options.pack).toBe('3S 2100mAh LiFe')
  expect(fitted('current', '14.4V 3200').options.pack).toBe('4S 3200mAh Li-ion')
  expect(fitted('current', '15.2V 1400').options.pack).toBe('4S 1400mAh LiPo')
  expect(fitted('current', '9.9V 2100').doubts).toContain('chemistryAssumed')
  expect(fitted('percent', '4S 1400 15.2V').options.at).toBe('15.2V pack')
  expect(fitted('percent', '4S 1400 lihv 15.2V').options.at).toBeUndefined()
})

it('charged by somebody is not charged full', () => {
  expect(fitted('percent', '3S 2200 charged with 1000 mAh').options.at).toBeUndefined()
  expect(fitted('percent', '3S 2200 is charged').options.at).toBe('full')
})

it('a pack told in full is meant, not the number in a name', () => {
  expect(fitted('current', 'the Heron 600 flies a 3S 1850 lipo').options.pack).toBe('3S 1850mAh LiPo')
})

it('boards are known however they are spelled', () => {
  for (const word of ['parallel', 'parrallel', 'paralell', 'parellel', 'parralel'])
    expect(fitted('parallel', `5S 950 lipo x4 ${word}`).left).toEqual([])
})
