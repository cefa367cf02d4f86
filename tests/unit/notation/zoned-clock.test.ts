// When the clocks of a place show a time next: over midnight, and where they are put on or back in between.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readClock, writeClock } from '../../../src/language/quantities/clock.ts'
import { clockIn, nextIn, zonesShowing } from '../../../src/language/quantities/zoned-clock.ts'

const vienna = 'Europe/Vienna'
const next = (zone: string, clock: string, now: string): string =>
  nextIn(zone, readClock(clock), new Date(now)).toISOString().slice(0, 16)

describe('the next time that a clock shows', () => {
  it.each([
    ['today', '13:20', '2031-05-04T10:42:10Z', '2031-05-04T11:20'],
    ['tomorrow, where it is over', '13:20', '2031-05-04T11:20:00Z', '2031-05-05T11:20'],
    ['over the end of a year', '0:10', '2031-12-31T22:50:00Z', '2031-12-31T23:10'],
    ['of either half of the day the sooner', '9:30', '2031-05-04T10:42:10Z', '2031-05-04T19:30'],
    ['around noon too', '12:40', '2031-05-04T21:00:00Z', '2031-05-04T22:40'],
    ['only of the half that was said', '9:30 am', '2031-05-04T10:42:10Z', '2031-05-05T07:30'],
    ['of tonight', 'tonight 9:30', '2031-05-04T05:00:00Z', '2031-05-04T19:30'],
    ['of tomorrow', 'tomorrow 13:20', '2031-05-04T08:00:00Z', '2031-05-05T11:20'],
    ['of a weekday', 'tuesday 13:20', '2031-05-04T08:00:00Z', '2031-05-06T11:20'],
    ['of the same weekday, once it is over', 'sunday 10:00 am', '2031-05-04T09:00:00Z', '2031-05-11T08:00'],
    ['at the end of the day', '24:00', '2031-05-04T08:00:00Z', '2031-05-04T22:00'],
  ])('%s: %s', (_, clock, now, expected) => {
    expect(next(vienna, clock, now)).toBe(expected)
  })

  it.each([
    ['after they are put on', '4:00 am', '2031-03-29T23:30:00Z', '2031-03-30T02:00'],
    ['and the day before that', '13:00', '2031-03-29T12:30:00Z', '2031-03-30T11:00'],
    ['in the hour that is left out, as long after as without', '02:30', '2031-03-30T00:50:00Z', '2031-03-30T01:30'],
    ['after they are put back', '4:00 am', '2031-10-25T22:30:00Z', '2031-10-26T03:00'],
    ['and the day before that', '13:00', '2031-10-25T11:30:00Z', '2031-10-26T12:00'],
    ['in the hour that comes twice, the first time', '02:30', '2031-10-26T00:10:00Z', '2031-10-26T00:30'],
    ['and the second time, once the first is over', '02:30', '2031-10-26T00:40:00Z', '2031-10-26T01:30'],
  ])('%s: %s', (_, clock, now, expected) => {
    expect(next(vienna, clock, now)).toBe(expected)
  })

  it.each([
    ['Asia/Kolkata', '2031-05-04T07:50'],
    ['+05:30', '2031-05-04T07:50'],
    ['Pacific/Kiritimati', '2031-05-04T23:20'],
    ['Pacific/Pago_Pago', '2031-05-05T00:20'],
  ])('in %s', (zone, expected) => {
    expect(next(zone, '13:20', '2031-05-04T07:00:00Z')).toBe(expected)
  })

  it('is shown then, within a day and an hour, wherever and whenever', () => {
    const zones = fc.constantFrom(vienna, 'America/St_Johns', 'Australia/Lord_Howe', 'Pacific/Apia', '-03:30')
    const moments = fc.integer({ min: Date.UTC(2026, 0), max: Date.UTC(2030, 0) })
    const clocks = fc.record({ hour: fc.integer({ min: 13, max: 23 }), minute: fc.integer({ min: 0, max: 59 }) })
    fc.assert(
      fc.property(zones, moments, clocks, (zone, at, clock) => {
        const now = new Date(at)
        const then = nextIn(zone, clock, now)
        expect(clockIn(zone, then, then)).toEqual(clock)
        expect(then.getTime() - at).toBeGreaterThan(0)
        expect(then.getTime() - at).toBeLessThanOrEqual(25 * 3_600_000)
      }),
    )
  })
})

it('says the day where it is the next', () => {
  const now = new Date('2031-05-04T21:30:00Z')
  expect(writeClock(clockIn(vienna, new Date('2031-05-04T21:40:00Z'), now))).toBe('23:40')
  expect(writeClock(clockIn(vienna, new Date('2031-05-04T22:10:00Z'), now))).toBe('tomorrow 0:10')
})

it('a clock that is told is that of a zone, or of one of two', () => {
  const now = new Date('2031-05-04T10:42:10Z')
  const shown = (clock: string) => zonesShowing(readClock(clock), now)
  expect(shown('13:42')).toEqual(['+03:00'])
  expect(shown('8:40 am')).toEqual(['-02:02'])
  expect(shown('0:10')).toEqual(['-10:32'])
  expect(shown('23:10')).toEqual(['-11:32'])
  expect(shown('12:40')).toEqual(['+01:58', '-10:02'])
  for (const clock of ['13:42', '8:40 am', '0:10', '23:10'])
    for (const zone of shown(clock)) expect(writeClock(clockIn(zone, now, now))).toBe(clock.replace(' am', ''))
})
