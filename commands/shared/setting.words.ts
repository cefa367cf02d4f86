// A setting in words: what to set, what held it down, and how it came about; also by the rules of a club.

import type { Cutoff } from '../../src/charging/setting/bounds.ts'
import type { Limit, LimitKind, Provenance } from '../../src/charging/setting/limit.ts'
import type { Setting } from '../../src/charging/setting/setting.ts'
import type { Situation } from '../../src/charging/situation/situation.ts'
import { fullVoltage_V } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { chargerEfficiency } from '../../src/charging/things/practice.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { limitHolders } from '../../src/handbook/rules/holders.words.ts'
import { isToStorage } from './charging.ts'

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

/** A sentence for each rule that bound. Limits on the current have lines of their own. */
export function houseWorking(situation: Situation, cutoff: Cutoff, locale: Locale): readonly (Text | undefined)[] {
  return [storageBound(situation, locale), fullBound(situation, cutoff, locale), floorBound(situation, locale)]
}

function storageBound({ pack, to, house }: Situation, { say, show }: Locale): Text | undefined {
  const storage_V = pack && house.storagePerCell_V?.[pack.chemistry.name]
  if (storage_V === undefined || !isToStorage(to)) return undefined
  return say`Storage is ${show.perCell(storage_V)} a cell by the rules of this club.`
}

/** Volts that were asked for are bound only where they were lowered; full and a percentage start from the club's full. */
function fullBound(
  { pack, to, house }: Situation,
  { perCell_V, loweredBy }: Cutoff,
  { say, show, own }: Locale,
): Text | undefined {
  if (!pack) return undefined
  const full_V = fullVoltage_V(pack.chemistry, house)
  const meansFull = to === undefined || to.kind === 'soc' || (to.kind === 'named' && to.name === 'full')
  const isBound = meansFull || loweredBy === 'house'
  if (!isBound || perCell_V !== full_V || full_V === pack.chemistry.full_V.value) return undefined
  return say`Full is ${show.perCell(full_V)} a cell for ${own(pack.chemistry.name)} by the rules of this club.`
}

function floorBound({ source, house }: Situation, { say, show }: Locale): Text | undefined {
  if (source?.kind !== 'battery') return undefined
  const { name, loadFloor_V } = source.pack.chemistry
  const floor_V = house.sourceFloorPerCell_V?.[name]
  if (floor_V === undefined || floor_V <= loadFloor_V.value) return undefined
  return say`The source is stopped at ${show.perCell(floor_V)} a cell at the lowest by the rules of this club.`
}
