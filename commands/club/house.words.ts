// What is said of the rules of a club, and of those that were changed.

import type { WordsOf } from '../../src/assistant/command.ts'
import { lifted, limits } from '../../src/assistant/naming/told-rules.ts'
import { allEnds } from '../../src/charging/things/charge-end.ts'
import { liIon } from '../../src/charging/things/chemistries.ts'
import { joined } from '../../src/ground/text.ts'
import { endWords } from '../shared/charge.words.ts'
import { asksAgain } from '../shared/next.ts'
import { undoLine } from '../shared/undo.words.ts'
import { clubFacts } from './club-facts.ts'
import { type houseSet, takes } from './house.ts'
import { changesWords, ruleNames, settingWords } from './house-problems.words.ts'
import { type houseShow, shownRules } from './house-show.ts'

export const houseShowWords: WordsOf<typeof houseShow> = locale => {
  const { say, own, show } = locale
  const names = ruleNames(locale)
  return {
    summary: say`Shows the charging rules of this club.`,
    asks: [own('what has this club set'), own('which limits hold in this club')],
    takes: {},
    answer: ({ rules, house }) => [
      rules.some(({ isSet }) => isSet) || house.gentleLiIon || house.coldest_C !== undefined
        ? say`This club has tighter limits.`
        : say`This club has tightened no limit: those of each type hold.`,
      ...[...Map.groupBy(rules, ({ rule }) => rule)].map(
        ([rule, each]) =>
          say`${rule === 'maxRate_C' ? names[rule] : say`${names[rule]}, a cell`}: ${joined(
            each.map(
              ({ chemistry, value }) =>
                say`${own(chemistry.name)} ${rule === 'maxRate_C' ? show.rate(value) : show.perCell(value)}`,
            ),
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
      return rules.find(rule => rule.key === key)?.isSet ? say`${value} (this club)` : say`${value} (of the type)`
    },
    working: ({ house }) => [
      ...clubFacts.map(fact => {
        const value = house[fact]
        return value === undefined ? undefined : say`${names[fact]}: ${settingWords(fact, value, locale)}`
      }),
      say`${names.gentleLiIon}: ${settingWords('gentleLiIon', house.gentleLiIon ?? false, locale)}`,
      house.chargeEnd === undefined
        ? undefined
        : say`${names.chargeEnd}: ${settingWords('chargeEnd', house.chargeEnd, locale)}`,
      say`${names.decimalMark}: ${settingWords('decimalMark', house.decimalMark ?? '.', locale)}`,
      say`${names.language}: ${settingWords('language', house.language ?? 'English', locale)}`,
      say`${names.privateAnswers}: ${settingWords('privateAnswers', house.privateAnswers ?? 'everyone', locale)}`,
      say`Moderators change a rule with "house set".`,
    ],
  }
}

export const houseSetWords: WordsOf<typeof houseSet> = locale => {
  const { say, show, own } = locale
  const { name, full_V, gentleFull_V = full_V } = liIon
  return {
    summary: say`Tightens the charging rules of this club; for moderators.`,
    tells: [own('limit LiPo to 1C in this club')],
    takes: {
      chemistry: { about: say`which cells rate, full, storage and floor are for` },
      rate: { about: say`highest charge rate, or none to lift the rule` },
      full: { about: say`highest voltage per cell of a charge, or none` },
      storage: { about: say`storage voltage per cell, or none` },
      floor: { about: say`voltage per cell at which a battery used as a source is stopped, or none` },
      coldest: { about: say`temperature of the cells below which nobody charges, or none` },
      gentle: { about: say`yes: ${own(name)} is charged to ${show.perCell(gentleFull_V.value)} a cell only` },
      ends: {
        about: say`at which current the chargers here end: ${joined(
          allEnds.map(end => endWords(end, locale)),
          ', ',
        )}, or after how long by their clocks (${own('90min')}); or none`,
      },
      decimal: { about: say`point or comma` },
      language: { about: say`English; no other so far` },
      'private-answers': { about: say`who may have an answer that only they see` },
      emergency: { about: say`number to call for help, shown in an emergency, or none` },
      address: { about: say`address of the field, shown in an emergency, or none` },
      collection: { about: say`where batteries are handed in, shown where one has to be, or none` },
      quiet: { about: say`hours in which nobody comes to hand in anything, or none` },
      clock: {
        about: say`the time zone here, by which reminders are set for a time of day, such as ${own('Europe/Vienna')} or ${own('UTC+2')}, or none`,
      },
      digest: {
        about: say`${own('weekly')}: what was refused, not understood or marked wrong is told there too; or none`,
      },
      pinned: { about: say`${own('change')}: also where pinned answers change with it` },
      alerts: {
        about: say`${own('here')}: moderators are told of emergencies and unsound packs in this room; or none`,
      },
    },
    answer: ({ changes, before, isSame }) =>
      isSame
        ? [
            changes.every(({ value }) => value === null)
              ? say`There is no such limit of this club.`
              : say`It is set so already: ${changesWords(changes, locale)}.`,
          ]
        : [say`Set for this club: ${changesWords(changes, locale)}.`, say`Before: ${changesWords(before, locale)}.`],
    next: ({ isSame }, asked) => {
      const standing = limits.filter(limit => asked[limit] != null)
      const lifting = Object.fromEntries(standing.map(limit => [limit, lifted]))
      return isSame && standing.length > 0 ? [asksAgain(takes, asked)(say`Lift it`, 'house set', lifting)] : []
    },
    working: () => [
      undoLine(locale),
      say`"house show" shows them all. A rule only ever tightens what the type and the label allow.`,
    ],
  }
}
