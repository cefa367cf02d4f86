// Which of a charger's cutoffs to choose where its list lacks the one wanted, and how full that leaves the cells.

import type { Context } from '../../src/assistant/context.ts'
import type { Answer } from '../../src/assistant/reply.ts'
import { trimCautions } from '../../src/cautions/trim.ts'
import { chooseCutoff, fullVoltage_V } from '../../src/charging/setting/old-cutoff.ts'
import { chargeAtRest } from '../../src/charging/upkeep/rest-charge.ts'
import { highestSetting_V } from '../../src/charging/upkeep/trim.ts'
import type { Level } from '../../src/language/things/state.ts'
import { chargeFigure, spanOf } from '../shared/charge-figure.ts'
import { figuresIn } from '../shared/figure.ts'
import { levelsOf } from '../shared/levels.ts'
import { refusedAnswer } from '../shared/refused.ts'
import { cite } from '../shared/working.ts'
import { houseLine, type JudgedPack } from './trim-words.ts'

interface Wish extends JudgedPack {
  /** Of the charger, per cell. */
  readonly cutoffs_V: readonly number[]
  readonly to: Level | undefined
  /** What the cells get above what the charger shows, in V. */
  readonly error_V: number
}

/** The cutoff to set on a charger that can be set to any. */
export function anyCutoff(
  { pack, named, to }: Omit<Wish, 'cutoffs_V' | 'error_V'>,
  { house, show }: Context,
): Answer {
  const chemistry = pack.chemistry
  const { target } = levelsOf(pack, house, undefined, to)
  const cutoff = chooseCutoff(chemistry, target, house, undefined, chemistry.full_V.value)
  if ('refusal' in cutoff) return refusedAnswer(cutoff, { pack }, show)
  const { perCell_V } = cutoff
  const { soc, band } = chargeAtRest(chemistry, perCell_V)
  const inAll = pack.series > 1 ? ` (${show.voltage(perCell_V * pack.series)} for ${pack.series}S)` : ''
  const figure = figuresIn(show)
  return {
    verdict: 'go',
    headline: `Set ${show.perCell(perCell_V)} per cell${inAll} for ${chemistry.name}, and never more than ${show.perCell(fullVoltage_V(chemistry, house))}.`,
    figures: [
      figure.perCell('cutoffPerCell', 'cutoff per cell', perCell_V),
      ...(pack.series > 1
        ? [figure.voltage('cutoffPack', 'cutoff of the pack', perCell_V * pack.series)]
        : []),
      chargeFigure('charge that results', { soc, band }, show),
    ],
    working: [
      ...houseLine(fullVoltage_V(chemistry, house), chemistry, show),
      `Full is ${show.perCell(chemistry.full_V.value)} per cell (${cite(chemistry.full_V)}).`,
      `Charge at ${show.perCell(perCell_V)} at rest (${cite(chemistry.curve)}); stopped at a tenth of the current it is a little less.`,
    ],
    cautions: trimCautions(named ? { pack } : {}),
  }
}

export function chosenCutoff(
  { pack, named, cutoffs_V, to, error_V }: Wish,
  { house, show }: Context,
): Answer {
  const chemistry = pack.chemistry
  const { target } = levelsOf(pack, house, undefined, to)
  const wanted_V = target.kind === 'voltage' ? target.perCell_V : target.cutoffPerCell_V
  const highest_V = highestSetting_V(Math.min(wanted_V, fullVoltage_V(chemistry, house)), error_V)
  const atOrBelow = chooseCutoff(
    chemistry,
    { kind: 'voltage', perCell_V: wanted_V },
    house,
    cutoffs_V,
    highest_V,
  )
  const lists = cutoffs_V.map(show.perCell).join(', ')
  const limit_V = highestSetting_V(fullVoltage_V(chemistry, house), error_V)
  // Only a wish below full leaves room for the next cutoff above it.
  const nextAbove_V = cutoffs_V
    .filter(cutoff_V => cutoff_V > wanted_V && cutoff_V <= limit_V + 1e-9)
    .toSorted((a, b) => a - b)[0]
  const refused = 'refusal' in atOrBelow
  if (refused && (atOrBelow.refusal.kind !== 'no fitting cutoff' || nextAbove_V === undefined)) {
    return refusedAnswer(atOrBelow, { pack }, show)
  }
  const set_V = refused ? (nextAbove_V as number) : atOrBelow.perCell_V
  const cells_V = Math.min(set_V + Math.max(0, error_V), chemistry.full_V.value)
  const { soc, band } = chargeAtRest(chemistry, cells_V)
  const exact = Math.abs(cells_V - wanted_V) < 0.005
  const why = exact
    ? 'That is the cutoff wanted.'
    : set_V > wanted_V
      ? `The charger has none at or near ${show.perCell(wanted_V)}; this one is still within full. Stop the charge by hand at ${show.perCell(wanted_V)} if you want less.`
      : `The charger has no ${show.perCell(wanted_V)}; the next lower leaves the pack less full, which does no harm.`
  const figure = figuresIn(show)
  return {
    verdict: exact ? 'go' : 'go with care',
    headline: `Choose ${show.perCell(set_V)} per cell: it fills ${chemistry.name} cells to about ${show.percent(soc)} (${spanOf(band, show)}). ${why}`,
    figures: [
      figure.perCell('cutoffPerCell', 'cutoff per cell', set_V),
      figure.voltage('cutoffPack', 'cutoff of the pack', set_V * pack.series),
      chargeFigure('charge that results', { soc, band }, show),
    ],
    working: [
      ...houseLine(fullVoltage_V(chemistry, house), chemistry, show),
      `The charger has ${lists}; wanted ${show.perCell(wanted_V)}; full is ${show.perCell(chemistry.full_V.value)} (${cite(chemistry.full_V)}).`,
      ...(error_V > 0
        ? [
            `The cells get ${show.number(error_V, 3)} V more than the charger says, so no setting above ${show.perCell(limit_V)}.`,
          ]
        : []),
      `Charge at ${show.perCell(cells_V)} at rest (${cite(chemistry.curve)}); stopped at a tenth of the current it is a little less.`,
    ],
    cautions: trimCautions(named ? { pack } : {}),
  }
}
