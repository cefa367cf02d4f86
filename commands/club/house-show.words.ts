// What is said of the rules of a club.

import type { WordsOf } from '../../src/assistant/command.ts'
import { joined } from '../../src/ground/text.ts'
import { limitWords, ruleNames, settingWords } from './house.words.ts'
import { type houseShow, shownRules } from './house-show.ts'

export const houseShowWords: WordsOf<typeof houseShow> = locale => {
  const { say, own, show } = locale
  const names = ruleNames(locale)
  return {
    summary: say`Shows the charging rules of this club.`,
    asks: [own('what has this club set')],
    takes: {},
    answer: ({ rules, house }) => [
      rules.some(({ isSet }) => isSet) || house.gentleLiIon || house.coldest_C !== undefined
        ? say`This club has tightened some limits; where it has not, the chemistry stands.`
        : say`This club has tightened no limit: the chemistry stands.`,
      ...[...Map.groupBy(rules, ({ rule }) => rule)].map(
        ([rule, each]) =>
          say`${names[rule]}: ${joined(
            each.map(({ chemistry, value }) => say`${own(chemistry.name)} ${limitWords(rule, value, locale)}`),
            ', ',
          )}.`,
      ),
      house.coldest_C === undefined ? undefined : say`${names.coldest_C}: ${show.temperature(house.coldest_C)}.`,
    ],
    figures: Object.fromEntries(
      shownRules().map(({ key, rule, chemistry }) => [key, say`${own(chemistry.name)}, ${names[rule]}`]),
    ),
    shown: (number, { key, shown }, { rules }) => {
      const value = shown === 'perCell' ? say`${number} a cell` : number
      return rules.find(rule => rule.key === key)?.isSet ? say`${value} (this club)` : say`${value} (chemistry)`
    },
    working: ({ house }) => [
      say`${names.gentleLiIon}: ${settingWords('gentleLiIon', house.gentleLiIon ?? false, locale)}`,
      say`${names.decimalMark}: ${settingWords('decimalMark', house.decimalMark ?? '.', locale)}`,
      say`${names.language}: ${settingWords('language', house.language ?? 'English', locale)}`,
      say`${names.privateAnswers}: ${settingWords('privateAnswers', house.privateAnswers ?? 'everyone', locale)}`,
      say`Moderators change a rule with "house set".`,
    ],
  }
}
