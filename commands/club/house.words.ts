// The words for the rules of a club, shared by the command that sets them and the one that shows them.

import type { ChemistryRule } from '../../src/charging/setting/house-range.ts'
import { liIon } from '../../src/charging/things/chemistries.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import type { HouseChange } from '../../src/memory/memory.ts'

export const ruleNames = ({ say }: Locale): Readonly<Record<HouseChange['rule'], Text>> => ({
  maxRate_C: say`highest charge rate`,
  storagePerCell_V: say`storage voltage`,
  sourceFloorPerCell_V: say`floor of a battery used as a source`,
  gentleLiIon: say`gentle Li-ion`,
  decimalMark: say`decimal mark`,
  language: say`language`,
  privateAnswers: say`private answers`,
})

export const limitWords = (rule: ChemistryRule, value: number, { say, show }: Locale): Text =>
  rule === 'maxRate_C' ? show.rate(value) : say`${show.perCell(value)} per cell`

/** One rule and its value as a moderator reads it. */
export function changeWords(change: HouseChange, locale: Locale): Text {
  const { say, own } = locale
  const name = ruleNames(locale)[change.rule]
  if ('chemistry' in change) {
    const value = change.value === null ? say`as the chemistry has it` : limitWords(change.rule, change.value, locale)
    return say`${own(change.chemistry)}, ${name}: ${value}`
  }
  return say`${name}: ${change.value === null ? say`not set` : settingWords(change.rule, change.value, locale)}`
}

export function settingWords(rule: HouseChange['rule'], value: string | boolean, locale: Locale): Text {
  const { say, show, own } = locale
  const { name, full_V, gentleFull_V = full_V } = liIon
  if (rule === 'gentleLiIon') {
    return value ? say`yes, ${own(name)} is charged to ${show.perCell(gentleFull_V.value)} per cell` : say`no`
  }
  if (rule === 'decimalMark') return value === ',' ? say`comma` : say`point`
  if (rule === 'privateAnswers') return value === 'moderators' ? say`moderators only` : say`everyone`
  return own(String(value))
}
