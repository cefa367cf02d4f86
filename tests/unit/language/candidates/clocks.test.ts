import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readClock, weekdays, writeClock } from '../../../../src/language/quantities/clock.ts'
import { coveredTexts } from '../../../support/covered.ts'
import { problemOf } from '../../notation/problem-of.ts'

describe('times of day', () => {
  it.each([
    ['done by 3pm', '15:00'],
    ['at 14:30', '14:30'],
    ['half past two', '2:30'],
    ['half 3', '3:30'],
    ['quarter to six', '5:45'],
    ['ten past two in the afternoon', '14:10'],
    ['8 in the morning', '8:00'],
    ["5 o'clock", '5:00'],
    ['22 Uhr', '22:00'],
    ['pour 9h30, ready at 9h30', '9:30'],
    ['by noon', '12:00'],
    ['back by six', '6:00'],
    ['saturday at 9:00', 'saturday 9:00'],
    ['on friday', 'friday'],
  ])('of %j', (text, expected) => {
    expect(coveredTexts(text, 'clock')).toContain(expected)
    const clock = readClock(expected)
    expect(readClock(writeClock(clock))).toEqual(clock)
  })

  it('of a range are both its hours', () => {
    expect(coveredTexts('from 20 to 9 in the evening', 'clock')).toEqual(['20:00', '21:00'])
    expect(coveredTexts('by 20 to 9', 'clock')).toEqual(['8:40'])
  })

  it.each(['at 2A', 'in 40 min', 'half full', '3.7 to 4.2', 'the sun is out', '3 packs'])('none in %j', text => {
    expect(coveredTexts(text, 'clock')).toEqual([])
  })

  it('reads what it wrote', () => {
    const some = fc.record({
      day: fc.constantFrom(undefined, ...weekdays),
      hour: fc.integer({ min: 0, max: 24 }),
      minute: fc.integer({ min: 0, max: 59 }),
    })
    fc.assert(
      fc.property(some, clock => {
        expect(readClock(writeClock(clock))).toEqual(clock)
      }),
    )
  })

  it.each(['', '25:00', '14:60', 'someday', '14'])('refuses %j', text => {
    expect(problemOf(() => readClock(text)).example).toBe('14:30')
  })
})
