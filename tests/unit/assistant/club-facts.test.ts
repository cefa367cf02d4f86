// What a club tells of itself stands where an answer needs it, whole, and nowhere else.

import { describe, expect, test } from 'vitest'
import { dangerReply, urgentReply } from '../../../src/assistant/asking/danger-first.ts'
import { usedBy } from '../../../src/assistant/layers/budget.ts'
import { withClubFacts } from '../../../src/assistant/layers/club-facts.ts'
import { linesOf } from '../../../src/assistant/layers/short.ts'
import type { Reply } from '../../../src/assistant/reply.ts'
import { type Danger, dangers } from '../../../src/charging/situation/dangers.ts'
import { english } from '../../../src/ground/locale.ts'
import { dangersIn } from '../../../src/language/dangers/index.ts'
import type { HouseRules } from '../../../src/memory/memory.ts'

const locale = english('.')
const typed = locale.own('asked')
const rules: HouseRules = {
  emergencyNumber: '112',
  fieldAddress: 'Field lane 3, Newtown',
  collectionPoint: 'Steel box at the gate',
  quietHours: '22:00 to 07:00',
}
const said = (danger: Danger, by: HouseRules = rules) =>
  linesOf(withClubFacts(dangerReply({ dangers: [danger] }, typed, undefined, locale), by)).join('\n')

describe('what a club tells of itself', () => {
  test('in an emergency: whom to call from where, before all but getting away', () => {
    const urgent = urgentReply(dangersIn('my pack is on fire'), typed, locale) as Reply
    const [first] = linesOf(withClubFacts(urgent, rules))
    expect(first).toMatch(/^NO ⛔ Get away from it now.* Call 112\. Our field: Field lane 3, Newtown\.$/)
    expect(said('injury')).toContain('112')
  })

  test('of a pack that is handed in: where, and when not', () => {
    for (const danger of ['swollen', 'pierced', 'wet', 'disposal'] as const)
      expect(said(danger)).toContain(
        'here: Steel box at the gate. Nobody takes one in during the quiet hours, 22:00 to 07:00.',
      )
  })

  test('nothing where nothing is needed, or nothing is known', () => {
    expect(said('unattended')).not.toMatch(/112|Steel box/)
    expect(said('swollen', {})).not.toContain('hands batteries in')
    expect(said('swollen', { quietHours: '22:00 to 07:00' })).toContain('Nobody takes one in during the quiet hours')
    expect(said('fire', {})).not.toContain('Call 1')
    expect(said('fire', { fieldAddress: 'Field lane 3' })).toContain('call the fire service. Our field: Field lane 3.')
  })

  test.each(Object.keys(dangers) as Danger[])('%s fits a phone with the longest places', danger => {
    const long = 'Field lane '.repeat(8).slice(0, 60).trim()
    const most = { ...rules, fieldAddress: long, collectionPoint: long }
    const reply = withClubFacts(dangerReply({ dangers: [danger] }, typed, undefined, locale), most)
    const { lines, characters, rows } = usedBy(linesOf(reply))
    expect(lines).toBeLessThanOrEqual(12)
    expect(characters).toBeLessThanOrEqual(900)
    // An address of two rows stands whole, where all else that is to be done for the hurt fills the phone.
    expect(rows).toBeLessThanOrEqual(danger === 'injury' ? 19 : 18)
  })
})
