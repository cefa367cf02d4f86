// The working of an answer: formulas with their numbers, and where each rule comes from.

import { whoLimits } from '../../src/cautions/refusals.ts'
import type { Limit, Provenance } from '../../src/charging/setting/limit.ts'
import type { Setting } from '../../src/charging/setting/old-setting.ts'
import type { Refusal } from '../../src/charging/setting/refusal.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { chargerEfficiency } from '../../src/charging/things/practice.ts'
import type { Show } from '../../src/ground/show.ts'

/** Where a number comes from, and how firmly it stands. */
export const cite = ({ standing, source }: Provenance): string =>
  standing === undefined || standing === 'published' ? source : `${standing}: ${source}`

/** How the current, the cutoff and the input power came about. */
export function settingWorking(setting: Setting, pack: Pack, show: Show): string[] {
  const { wanted_A, wantedRate_C, wantedFrom, cutoff, cutoffPack_V, limits, bound, current_A } = setting
  const lines = [
    `Wanted current: ${show.rate(wantedRate_C)} × ${show.capacity(pack.capacity_Ah)} = ${show.current(wanted_A)} (${cite(wantedFrom)}).`,
    ...limits.map(limit => limitLine(limit, cutoffPack_V, pack, show)),
  ]
  if (bound === 'steps') {
    lines.push(`The charger's step nearest to that within every limit is ${show.current(current_A)}.`)
  } else if (bound) {
    lines.push(`What binds: ${show.current(bound.value_A)} is all that ${whoLimits[bound.kind]}.`)
  }
  const { full_V } = pack.chemistry
  lines.push(
    `Cutoff: ${show.perCell(cutoff.perCell_V)} × ${pack.series} = ${show.voltage(cutoffPack_V)}; full is ${show.perCell(full_V.value)} per cell (${cite(full_V)}).`,
  )
  return lines
}

const limitNames: Record<Limit['kind'], string> = {
  label: 'label',
  chemistry: 'cells',
  house: 'house',
  temperature: 'temperature',
  condition: 'state',
  charger: 'charger',
  'charger power': "charger's power",
  source: 'source',
}

function limitLine(limit: Limit, cutoffPack_V: number, pack: Pack, show: Show): string {
  const { kind, value_A, rate_C, power_W, from } = limit
  const most = show.current(value_A)
  if (rate_C !== undefined) {
    return `Limit, ${limitNames[kind]}: ${show.rate(rate_C)} × ${show.capacity(pack.capacity_Ah)} = ${most} (${cite(from)}).`
  }
  return power_W === undefined
    ? `Limit, ${limitNames[kind]}: ${most}.`
    : `Limit, ${limitNames[kind]}: ${show.power(power_W)} into the pack ÷ ${show.voltage(cutoffPack_V)} = ${most}.`
}

/** What the charger draws: its output over its efficiency, and over the volts of the source. */
export function inputWorking(setting: Setting, show: Show): string[] {
  const { current_A, cutoffPack_V, efficiency, input_W, input_A, feed } = setting
  const rule =
    efficiency === chargerEfficiency.value ? ` (${cite(chargerEfficiency)})` : ' (efficiency of the charger)'
  const power = `Input: ${show.current(current_A)} × ${show.voltage(cutoffPack_V)} ÷ ${show.number(efficiency, 2)} = ${show.power(input_W)}${rule}`
  return feed && input_A !== undefined
    ? [`${power}; ÷ ${show.voltage(feed.lowest_V)} = ${show.current(input_A)} at the source's lowest.`]
    : [`${power}.`]
}

/** Where the threshold that a refusal rests on comes from. */
export function refusalReason(refusal: Refusal, pack: Pack | undefined, show: Show): string[] {
  if (!pack) return []
  const chemistry = pack.chemistry
  switch (refusal.kind) {
    case 'damaged cell':
      return [`Damage threshold ${show.perCell(refusal.damage_V)} per cell (${cite(chemistry.damage_V)}).`]
    case 'overcharged cell':
    case 'cutoff above full':
      return [
        `Full is ${show.perCell(refusal.full_V)} per cell for ${chemistry.name} (${cite(chemistry.full_V)}).`,
      ]
    case 'cutoff too low':
      return [`Floor at rest ${show.perCell(refusal.least_V)} per cell (${cite(chemistry.restFloor_V)}).`]
    case 'temperature':
      return [`Charge window (${cite(chemistry.temperatureBands)}).`]
    case 'steps too large':
      return refusal.smallestCapacity_Ah === undefined
        ? []
        : [
            `Smallest pack: ${show.current(refusal.smallest_A)} ÷ ${show.rate(refusal.smallest_A / refusal.smallestCapacity_Ah)} = ${show.capacity(refusal.smallestCapacity_Ah)} (${cite(refusal.limit.from)}).`,
          ]
    default:
      return []
  }
}
