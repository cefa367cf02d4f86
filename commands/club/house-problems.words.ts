// The rules of a club in words, and what is said where one cannot be set as asked.

import { yesOrNo } from '../../src/assistant/asking-back/ask-back.words.ts'
import { verdictWords } from '../../src/assistant/layers/short.words.ts'
import { type ChemistryRule, coldestRange_C, houseRange } from '../../src/charging/setting/house-range.ts'
import type { ChargeEnd } from '../../src/charging/things/charge-end.ts'
import { chemistries, liIon } from '../../src/charging/things/chemistries.ts'
import type { Chemistry, Cited } from '../../src/charging/things/chemistry.ts'
import { type Locale, type Said, told } from '../../src/ground/locale.ts'
import { problemAt } from '../../src/ground/plain-text.ts'
import { Problem } from '../../src/ground/problem.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { rateKind, temperatureKind, voltageKind } from '../../src/language/kinds/values.ts'
import { chemistryNames } from '../../src/language/parts/chemistry.ts'
import type { HouseChange } from '../../src/memory/memory.ts'
import { endWords } from '../shared/charge.words.ts'
import { cite } from '../shared/setting.words.ts'
import type { ChangedCard } from './changed-cards.ts'

export const ruleNames = ({ say }: Locale): Readonly<Record<HouseChange['rule'], Text>> => ({
  maxRate_C: say`highest charge rate`,
  fullPerCell_V: say`highest volts`,
  storagePerCell_V: say`storage voltage`,
  sourceFloorPerCell_V: say`floor of a battery used as a source`,
  coldest_C: say`coldest cells to charge`,
  gentleLiIon: say`gentle Li-ion`,
  chargeEnd: say`end of a charge`,
  decimalMark: say`decimal mark`,
  language: say`language`,
  privateAnswers: say`private answers`,
  emergencyNumber: say`emergency number`,
  fieldAddress: say`address of the field`,
  collectionPoint: say`where batteries are handed in`,
  quietHours: say`quiet hours`,
  clock: say`clock`,
  digest: say`digest for moderators`,
  moderatorsRoom: say`where moderators are told of emergencies`,
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
  if (typeof value === 'number' && rule !== 'chargeEnd') return limitWords(rule as ChemistryRule, value, locale)
  return value === null ? locale.say`not set` : settingWords(rule, value, locale)
}

export function settingWords(rule: HouseChange['rule'], value: string | number | boolean, locale: Locale): Text {
  const { say, show, own } = locale
  const { name, full_V, gentleFull_V = full_V } = liIon
  if (rule === 'gentleLiIon') {
    return value ? say`yes, ${own(name)} is charged to ${show.perCell(gentleFull_V.value)} a cell` : say`no`
  }
  if (rule === 'chargeEnd') return endWords(value as ChargeEnd | number, locale)
  if (rule === 'decimalMark') return value === ',' ? say`comma` : say`point`
  if (rule === 'privateAnswers') return value === 'moderators' ? say`moderators only` : say`everyone`
  if (rule === 'moderatorsRoom') return say`in the room in which that was set`
  return own(String(value))
}

export const onlyEnglish: Said = ({ say }) => say`So far I answer in English only.`
export const onlyModeratorsSet = new Problem({
  final: true,
  what: ({ say }) => say`Only moderators change the rules of this club.`,
  expected: ({ say }) => say`a moderator to ask for it; anyone can look at the rules`,
  example: 'house show',
})
export const replacesRules = told(
  (locale, before: readonly HouseChange[], after: readonly HouseChange[]) =>
    locale.say`Change the rules of this club? Now: ${changesWords(before, locale)}. Then: ${changesWords(after, locale)}.`,
)

export interface PlannedRules {
  readonly before: readonly HouseChange[]
  readonly after: readonly HouseChange[]
  readonly changed: readonly ChangedCard[]
}

const listed = told(
  (locale, { before, after, changed }: PlannedRules) =>
    locale.say`${replacesRules(before, after)(locale)} ${cardsWords(changed, locale)}`,
)

/** `again` asks the same, with leave to change them. */
export const changesPinned = (planned: PlannedRules, again: string): Problem => yesOrNo(listed(planned), again)

const mostCards = 3

function cardsWords(changed: readonly ChangedCard[], locale: Locale): Text {
  const { say, show } = locale
  const named = changed.slice(0, mostCards).map(card => cardWords(card, locale))
  const left = changed.length - named.length
  const more = left > 0 ? say`${show.number(left, 0)} more` : undefined
  return say`Pinned answers that change: ${joined([...named, more], '; ')}.`
}

function cardWords({ title, verdicts, figures }: ChangedCard, locale: Locale): Text {
  const { say, own } = locale
  const words = verdictWords(locale)
  const [before, after] = verdicts?.map(one => words[one]) ?? figures?.map(({ text }) => text) ?? []
  const label = verdicts ? undefined : figures?.[0].label
  return say`${joined([own(title), label], ', ')}: ${joined([before])} becomes ${joined([after])}`
}

export const whichRule = (options: readonly string[]): Problem =>
  new Problem({
    what: ({ say }) => say`I need to know which rule to set.`,
    expected: ({ say, own }) => say`one or more of: ${joined(options.map(own), ', ')}`,
    example: 'house set chemistry: LiPo rate: 1C',
  })

export const forWhichCells = (rule: ChemistryRule, option: string, volts: string): Problem =>
  problemAt(option, locale => locale.say`I need to know which cells the ${ruleNames(locale)[rule]} is for.`, {
    expected: ({ own }) => own(`chemistry: ${chemistryNames.join(', ')}`),
    example: 'LiPo',
  }).offering(
    chemistryNames.map(name => ({ label: name, question: `house set chemistry: ${name} ${option}: ${volts}` })),
  )

const outside = told(
  (locale, rule: ChemistryRule, { name }: Chemistry, value: number) =>
    locale.say`A club cannot set the ${ruleNames(locale)[rule]} of ${locale.own(name)} to ${limitWords(rule, value, locale)}.`,
)

/** Looser than the chemistry allows, or a limit that no field day meets. */
export function limitOutside(rule: ChemistryRule, option: string, chemistry: Chemistry, value: number): Problem {
  const { lowest, highest } = houseRange(rule, chemistry)
  const bound = value > highest.value ? highest : lowest
  const { write } = rule === 'maxRate_C' ? rateKind : voltageKind
  return problemAt(write(value), outside(rule, chemistry, value), {
    expected: locale => {
      const limit = ({ value }: Cited) => limitWords(rule, value, locale)
      return locale.say`${limit(lowest)} to ${limit(highest)}; ${limit(bound)} is the limit (${cite(bound, locale)})`
    },
    example: `house set chemistry: ${chemistry.name} ${option}: ${write(bound.value)}`,
  })
}

export const coldestOutside = (value: number): Problem =>
  problemAt(
    temperatureKind.write(value),
    ({ say, show }) => say`A club cannot set the coldest cells to charge to ${show.temperature(value)}.`,
    {
      expected: ({ say, show }) =>
        say`${show.temperature(coldestRange_C.lowest)} to ${show.temperature(coldestRange_C.highest)}; below the first no cell may be charged`,
      example: 'house set coldest: 10°C',
    },
  )
