// What is said where a rule of the club cannot be set as asked.

import { type ChemistryRule, coldestRange_C } from '../../src/charging/setting/house-range.ts'
import type { Chemistry, Cited } from '../../src/charging/things/chemistry.ts'
import { type Said, told } from '../../src/ground/locale.ts'
import { Problem } from '../../src/ground/problem.ts'
import { joined } from '../../src/ground/text.ts'
import type { HouseChange } from '../../src/memory/memory.ts'
import { cite } from '../shared/setting.words.ts'
import { changesWords, limitWords, ruleNames } from './house.words.ts'

export const onlyEnglish: Said = ({ say }) => say`So far I answer in English only.`
export const onlyModeratorsSet = new Problem({
  what: ({ say }) => say`Only moderators change the rules of this club.`,
  expected: ({ say }) => say`a moderator to ask for it; anyone can look at the rules`,
  example: 'house show',
})
export const replacesRules = told(
  (locale, before: readonly HouseChange[], after: readonly HouseChange[]) =>
    locale.say`Change the rules of this club? Now: ${changesWords(before, locale)}. Then: ${changesWords(after, locale)}.`,
)

export const whichRule: Said = ({ say }) => say`I need to know which rule to set.`

export const oneOrMoreOf = told(
  ({ say, own }, options: readonly string[]) => say`one or more of: ${joined(options.map(own), ', ')}`,
)

export const forWhichCells = told(
  (locale, rule: ChemistryRule) => locale.say`I need to know which cells the ${ruleNames(locale)[rule]} is for.`,
)

export const forWhichCellsExpected = told(({ own }, names: readonly string[]) => own(`chemistry: ${names.join(', ')}`))

export const outside = told(
  (locale, rule: ChemistryRule, { name }: Chemistry, value: number) =>
    locale.say`A club cannot set the ${ruleNames(locale)[rule]} of ${locale.own(name)} to ${limitWords(rule, value, locale)}.`,
)

export const coldestOutside = told(
  ({ say, show }, value: number) => say`A club cannot set the coldest cells to charge to ${show.temperature(value)}.`,
)

export const coldestExpected: Said = ({ say, show }) =>
  say`${show.temperature(coldestRange_C.lowest)} to ${show.temperature(coldestRange_C.highest)}; below the first no cell may be charged`

export const outsideExpected = told(
  (locale, rule: ChemistryRule, [lowest, highest]: readonly [Cited, Cited], bound: Cited) => {
    const limit = ({ value }: Cited) => limitWords(rule, value, locale)
    return locale.say`${limit(lowest)} to ${limit(highest)}; ${limit(bound)} is the limit (${cite(bound, locale)})`
  },
)
