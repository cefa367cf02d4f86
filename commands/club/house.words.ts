// The words for the rules of a club, shared by the command that sets them and the one that shows them.

import type { ChemistryRule } from '../../src/charging/setting/house-range.ts'
import { chemistries, liIon } from '../../src/charging/things/chemistries.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import type { HouseChange } from '../../src/memory/memory.ts'

export const ruleNames = ({ say }: Locale): Readonly<Record<HouseChange['rule'], Text>> => ({
  maxRate_C: say`highest charge rate`,
  fullPerCell_V: say`highest volts of a charge`,
  storagePerCell_V: say`storage voltage`,
  sourceFloorPerCell_V: say`floor of a battery used as a source`,
  coldest_C: say`coldest cells to charge`,
  gentleLiIon: say`gentle Li-ion`,
  decimalMark: say`decimal mark`,
  language: say`language`,
  privateAnswers: say`private answers`,
})

export const limitWords = (rule: ChemistryRule, value: number, { say, show }: Locale): Text =>
  rule === 'maxRate_C' ? show.rate(value) : say`${show.perCell(value)} a cell`

/** The rules and their values as a moderator reads them; what is alike for several chemistries is said once. */
export function changesWords(changes: readonly HouseChange[], locale: Locale): Text {
  const { say, own } = locale
  const alike = Map.groupBy(changes, ({ rule, value }) => `${rule} ${value}`)
  const said = [...alike.values()].map(([change, ...others]) => {
    const { rule, value } = change as HouseChange
    const named = [change, ...others].flatMap(one => (one && 'chemistry' in one ? [own(one.chemistry)] : []))
    const concerned = named.length === chemistries.length ? [say`every type`] : named
    const name = ruleNames(locale)[rule]
    const told = say`${name} ${valueWords(rule, value, locale)}`
    return concerned.length > 0 ? say`${joined(concerned, ', ')}: ${told}` : told
  })
  return joined(said, '; ')
}

function valueWords(rule: HouseChange['rule'], value: HouseChange['value'], locale: Locale): Text {
  if (typeof value === 'number' && rule === 'coldest_C') return locale.show.temperature(value)
  if (typeof value === 'number') return limitWords(rule as ChemistryRule, value, locale)
  return value === null ? locale.say`not set` : settingWords(rule, value, locale)
}

export function settingWords(rule: HouseChange['rule'], value: string | boolean, locale: Locale): Text {
  const { say, show, own } = locale
  const { name, full_V, gentleFull_V = full_V } = liIon
  if (rule === 'gentleLiIon') {
    return value ? say`yes, ${own(name)} is charged to ${show.perCell(gentleFull_V.value)} a cell` : say`no`
  }
  if (rule === 'decimalMark') return value === ',' ? say`comma` : say`point`
  if (rule === 'privateAnswers') return value === 'moderators' ? say`moderators only` : say`everyone`
  return own(String(value))
}
