import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { candidatesOf } from '../../../../src/language/candidates/index.ts'
import { lengthBetween_s, readClock, weekdays, writeClock } from '../../../../src/language/quantities/clock.ts'
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
    ['8 in the morning', '8:00 am'],
    ['9:15am', '9:15 am'],
    ['at 09:30', '9:30 am'],
    ['at 1:20 pm', '13:20'],
    ['quarter to one am', '0:45'],
    ["5 o'clock", '5:00'],
    ['22 Uhr', '22:00'],
    ['pour 9h30, ready at 9h30', '9:30'],
    ['by noon', '12:00 pm'],
    ['back by six', '6:00'],
    ['saturday at 9:00', 'saturday 9:00'],
    ['on friday', 'friday'],
  ])('of %j', (text, expected) => {
    expect(coveredTexts(text, 'clock')).toContain(expected)
    const clock = readClock(expected)
    expect(readClock(writeClock(clock))).toEqual(clock)
  })

  it.each([
    ['9 am', { hour: 9, minute: 0, isSure: true }],
    ['1:20 p.m.', { hour: 13, minute: 20 }],
    ['12:15 pm', { hour: 12, minute: 15, isSure: true }],
    ['12:15am', { hour: 0, minute: 15 }],
    ['09:30', { hour: 9, minute: 30, isSure: true }],
    ['9:30', { hour: 9, minute: 30 }],
    ['tomorrow 9:30', { day: 'tomorrow', hour: 9, minute: 30 }],
  ])('reads %j', (text, clock) => {
    expect(readClock(text)).toEqual(clock)
    expect(readClock(writeClock(readClock(text)))).toEqual(clock)
  })

  it.each([
    ['9:00', '11:00', 2],
    ['9:00', '21:30', 12.5],
    ['9:30 am', '9:00 am', 11.5],
    ['20:00', '7:00', 11],
    ['11:00 am', '1:00', 2],
  ])('from %s to %s are %d hours', (start, end, hours) => {
    expect(lengthBetween_s(readClock(start), readClock(end)) / 3600).toBe(hours)
  })

  it.each([
    ['it is 12:40, remind me at 13:20', ['now', 'at']],
    ['12:40 here, remind me at 13:20', ['now', 'at']],
    ['ready by 15:00 here', ['by']],
    ['put it on at 13:20', ['start']],
  ])('in %j is the role of each', (text, cues) => {
    expect(
      candidatesOf(text)
        .filter(({ kind, text }) => kind === 'clock' && /:/.test(text))
        .map(({ cue }) => cue),
    ).toEqual(cues)
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
