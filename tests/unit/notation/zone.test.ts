// Time zones as people write them, and what is offered while they do.

import { describe, expect, it } from 'vitest'
import { zoneKind } from '../../../src/language/kinds/club-kinds.ts'
import { readZone, zones } from '../../../src/language/quantities/zone.ts'
import { problemOf } from './problem-of.ts'

describe('a time zone', () => {
  it.each([
    ['Europe/Vienna', 'Europe/Vienna'],
    ['europe/vienna', 'Europe/Vienna'],
    ['Vienna', 'Europe/Vienna'],
    ['new york', 'America/New_York'],
    ['America/New York', 'America/New_York'],
    ['"Europe/Vienna"', 'Europe/Vienna'],
    ['UTC+2', '+02:00'],
    ['GMT -3:30', '-03:30'],
    ['+05:30', '+05:30'],
    ['UTC', 'UTC'],
  ])('is read of %s', (text, zone) => {
    expect(readZone(text)).toBe(zone)
    expect(readZone(zone)).toBe(zone)
  })

  it.each(['Middle Earth', 'Europe/Nowhere', 'UTC+15', 'summer', '13:20'])('is none of "%s"', text => {
    expect(problemOf(() => readZone(text))).toMatchObject({ example: 'Europe/Vienna', token: text })
  })

  it('can be read by every name that is offered', () => {
    expect(zones.length).toBeGreaterThan(300)
    for (const zone of zones) expect(readZone(zone)).toBe(zone)
  })

  it('is offered by its name and by its city', () => {
    expect(zoneKind.complete('vie')).toContain('Europe/Vienna')
    expect(zoneKind.complete('Europe/V')).toContain('Europe/Vienna')
    expect(zoneKind.complete('new y')).toEqual(['America/New_York'])
    expect(zoneKind.complete('')).toHaveLength(25)
    expect(zoneKind.complete('zebra')).toEqual([])
  })
})
