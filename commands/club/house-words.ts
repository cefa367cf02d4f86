// The words for house rules, shared by the command that sets them and the one that shows them.

import type { ChemistryRule } from '../../src/charging/setting/house-range.ts'
import type { Show } from '../../src/ground/show.ts'
import type { HouseChange } from '../../src/memory/memory.ts'

export const ruleNames: Readonly<Record<HouseChange['rule'], string>> = {
  maxRate_C: 'highest charge rate',
  storagePerCell_V: 'storage voltage',
  sourceFloorPerCell_V: 'floor of a battery used as a source',
  gentleLiIon: 'gentle Li-ion',
  decimalMark: 'decimal mark',
  language: 'language',
  privateAnswers: 'private answers',
}

/** The name of a chemistry in the key of a figure: `LiIon`. */
export const inKey = (name: string): string =>
  name.replace(/[^\p{L}\d]+(\p{L}?)/gu, (_, letter: string) => letter.toUpperCase())

export function limitText(rule: ChemistryRule, value: number, show: Show): string {
  return rule === 'maxRate_C' ? show.rate(value) : `${show.perCell(value)} per cell`
}

/** One rule and its value as a moderator reads it. */
export function changeText(change: HouseChange, show: Show): string {
  const name = ruleNames[change.rule]
  if ('chemistry' in change) {
    const value =
      change.value === null ? 'as the chemistry has it' : limitText(change.rule, change.value, show)
    return `${change.chemistry}, ${name}: ${value}`
  }
  return `${name}: ${change.value === null ? 'not set' : settingText(change.rule, change.value)}`
}

export function settingText(rule: HouseChange['rule'], value: string | boolean): string {
  if (rule === 'gentleLiIon') return value ? 'yes, Li-ion is charged to 4.10 V per cell' : 'no'
  if (rule === 'decimalMark') return value === ',' ? 'comma' : 'point'
  if (rule === 'privateAnswers') return value === 'moderators' ? 'moderators only' : 'everyone'
  return String(value)
}
