// A setting in plain words: what to set, what held it down, and what calls for care.

import { whoLimits } from '../../src/cautions/refusals.ts'
import type { Care } from '../../src/charging/setting/fitness.ts'
import type { Setting } from '../../src/charging/setting/old-setting.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Show } from '../../src/ground/show.ts'

/** "Set 1 A and 4.35 V per cell (13.05 V for 3S)." and what else must be known at once. */
export function settingWords(setting: Setting, pack: Pack, show: Show): string {
  const { current_A, cutoff, cutoffPack_V, bound } = setting
  const set = `Set ${show.current(current_A)} and ${show.perCell(cutoff.perCell_V)} per cell (${show.voltage(cutoffPack_V)} for ${pack.series}S).`
  return [set, heldWords(bound), ...careWords(setting, setting, pack, show)].filter(Boolean).join(' ')
}

/** Which limit held the current down, where one did. */
export const heldWords = (bound: Setting['bound']): string =>
  typeof bound === 'object' ? `That is what ${whoLimits[bound.kind]}.` : ''

/** What calls for care, a sentence each. */
export function careWords(
  { cares, rate_C }: Pick<Setting, 'cares' | 'rate_C'>,
  { cutoff, wantedRate_C, current_A }: Setting,
  { chemistry }: Pack,
  show: Show,
): string[] {
  const { precharge_V, restFloor_V } = chemistry
  const words: Record<Care, string> = {
    precharge: `Below ${show.perCell(precharge_V.value)} per cell start with a tenth of the current until every cell is above that.`,
    'below floor': `The pack is below its floor of ${show.perCell(restFloor_V.value)} per cell: check every cell before and during the charge.`,
    'reduced by temperature': 'At this temperature only a part of the usual current is right.',
    'lower cutoff': `The charger has no ${show.perCell(cutoff.asked_V)} cutoff; this one leaves the pack less full.`,
    'above the wanted current': `That is ${show.rate(rate_C)}, faster than the recommended ${show.rate(wantedRate_C)}.`,
    'more than the source gives': `The source cannot carry all of it: hold the charger's input to the source's power, or set ${show.current(current_A)}; else the source may switch off.`,
  }
  const lowered: Partial<Record<NonNullable<typeof cutoff.loweredBy>, string>> = {
    house: `The rules of this house stop at ${show.perCell(cutoff.perCell_V)} per cell.`,
    temperature: `At this temperature ${show.perCell(cutoff.perCell_V)} per cell is the most.`,
  }
  const stop = cutoff.loweredBy && lowered[cutoff.loweredBy]
  return [...(stop ? [stop] : []), ...cares.map(care => words[care])]
}
