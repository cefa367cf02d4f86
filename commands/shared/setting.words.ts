// A setting in words: what to set, what held it down, and how it came about.

import type { Limit, LimitKind, Provenance } from '../../src/charging/setting/limit.ts'
import type { Setting } from '../../src/charging/setting/setting.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { chargerEfficiency } from '../../src/charging/things/practice.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { limitHolders } from '../../src/handbook/rules/holders.words.ts'

/** Where a number comes from, and how firmly it stands. */
export const cite = ({ standing, source }: Provenance, { own }: Locale): Text =>
  standing === undefined || standing === 'published' ? own(source) : own(`${standing}: ${source}`)

/** As the menu of a charger asks for it: "3S LiHV, balance charge, 1 A, ends at 13.05 V (4.35 V a cell)." */
export function menuWords(
  { current_A, cutoff, cutoffPack_V }: Pick<Setting, 'current_A' | 'cutoff' | 'cutoffPack_V'>,
  { series, chemistry }: Pack,
  { say, show, own }: Locale,
): Text {
  const cells = own(`${series}S ${chemistry.name}`)
  return series === 1
    ? say`${cells}, charge, ${show.current(current_A)}, ends at ${show.perCell(cutoff.perCell_V)}.`
    : say`${cells}, balance charge, ${show.current(current_A)}, ends at ${show.voltage(cutoffPack_V)} (${show.perCell(cutoff.perCell_V)} a cell).`
}

/** What held the current or the end down, where anything did. */
export const heldDown = (setting: Pick<Setting, 'bound' | 'cutoff'>, locale: Locale): readonly (Text | undefined)[] => [
  heldWords(setting.bound, locale),
  loweredWords(setting, locale),
]

/** Which limit held the current down, where one did. */
const heldWords = (bound: Setting['bound'], locale: Locale): Text | undefined =>
  typeof bound === 'object' ? locale.say`That is all that ${limitHolders(locale)[bound.kind]}.` : undefined

/** Why the cutoff is lower than what was asked for, where it is. */
function loweredWords({ cutoff }: Pick<Setting, 'cutoff'>, { say, show }: Locale): Text | undefined {
  switch (cutoff.loweredBy) {
    case 'house':
      return say`The rules of this club stop at ${show.perCell(cutoff.perCell_V)} a cell.`
    case 'temperature':
      return say`At this temperature ${show.perCell(cutoff.perCell_V)} a cell is the most.`
    case 'charger':
      return say`The charger has no ${show.perCell(cutoff.asked_V)} cutoff; this one leaves the pack less full, which does no harm.`
    case undefined:
      return undefined
  }
}

/** How the current, the cutoff and the input power came about. */
export function settingWorking(setting: Setting, pack: Pack, locale: Locale): readonly (Text | undefined)[] {
  const { say, show, own } = locale
  const { wanted_A, wantedRate_C, wantedFrom, cutoff, cutoffPack_V, limits, bound, current_A } = setting
  const { full_V } = pack.chemistry
  return [
    say`Wanted current: ${show.rate(wantedRate_C)} × ${show.capacity(pack.capacity_Ah)} = ${show.current(wanted_A)} (${cite(wantedFrom, locale)}).`,
    ...limits.map(limit => limitLine(limit, cutoffPack_V, pack, locale)),
    bound === 'steps'
      ? say`The charger's step nearest to that within every limit is ${show.current(current_A)}.`
      : bound && say`What binds: ${show.current(bound.value_A)} is all that ${limitHolders(locale)[bound.kind]}.`,
    say`Cutoff: ${show.perCell(cutoff.perCell_V)} × ${own(String(pack.series))} = ${show.voltage(cutoffPack_V)}; full is ${show.perCell(full_V.value)} a cell (${cite(full_V, locale)}).`,
  ]
}

const limitNames = ({ say }: Locale): Readonly<Record<LimitKind, Text>> => ({
  label: say`label`,
  chemistry: say`cells`,
  house: say`club`,
  temperature: say`temperature`,
  condition: say`state of the pack`,
  board: say`board`,
  charger: say`charger`,
  'charger power': say`charger's power`,
  source: say`source`,
})

function limitLine(limit: Limit, cutoffPack_V: number, pack: Pack, locale: Locale): Text {
  const { say, show } = locale
  const { kind, value_A, rate_C, power_W, from } = limit
  const name = limitNames(locale)[kind]
  const most = show.current(value_A)
  if (rate_C !== undefined)
    return say`Limit, ${name}: ${show.rate(rate_C)} × ${show.capacity(pack.capacity_Ah)} = ${most} (${cite(from, locale)}).`
  return power_W === undefined
    ? say`Limit, ${name}: ${most}.`
    : say`Limit, ${name}: ${show.power(power_W)} into the pack ÷ ${show.voltage(cutoffPack_V)} = ${most}.`
}

/** What the charger draws: its output over its efficiency, and over the volts of the source. */
export function inputWorking(setting: Setting, locale: Locale): Text {
  const { say, show } = locale
  const { current_A, cutoffPack_V, efficiency, input_W, input_A, feed } = setting
  const rule = efficiency === chargerEfficiency.value ? cite(chargerEfficiency, locale) : say`efficiency of the charger`
  const power = say`Input: ${show.current(current_A)} × ${show.voltage(cutoffPack_V)} ÷ ${show.number(efficiency, 2)} = ${show.power(input_W)} (${rule})`
  return feed?.lowest_V !== undefined && input_A !== undefined
    ? say`${power}; ÷ ${show.voltage(feed.lowest_V)} = ${show.current(input_A)} at the source's lowest.`
    : say`${power}.`
}
