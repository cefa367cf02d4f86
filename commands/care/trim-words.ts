// A charger judged by a meter: whether to leave it, correct it or take it out of use.

import type { Context } from '../../src/assistant/context.ts'
import type { Answer, Verdict } from '../../src/assistant/reply.ts'
import { trimCautions } from '../../src/cautions/trim.ts'
import { fullVoltage_V } from '../../src/charging/setting/old-cutoff.ts'
import type { Chemistry } from '../../src/charging/things/chemistry.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { chargeAtRest } from '../../src/charging/upkeep/rest-charge.ts'
import {
  faultyFrom_V,
  highestSetting_V,
  type Trim,
  type TrimVerdict,
  trimTolerance_V,
} from '../../src/charging/upkeep/trim.ts'
import type { Show } from '../../src/ground/show.ts'
import { chargeFigure } from '../shared/charge-figure.ts'
import { figuresIn } from '../shared/figure.ts'
import { cite } from '../shared/working.ts'

/** What was measured: the asker's pack, or one cell of its chemistry where no pack was named. */
export interface JudgedPack {
  readonly pack: Pack
  readonly named: boolean
}

/** Said where the house charges these cells less full than they may be. */
export const houseLine = (full_V: number, chemistry: Chemistry, show: Show): string[] =>
  full_V < chemistry.full_V.value
    ? [`The rules of this house charge ${chemistry.name} to ${show.perCell(full_V)} per cell at most.`]
    : []

/** Above full by this a cell is past what IEC 62133-2 lets it see, 4.25 V for a 4.20 V cell (from memory). */
const hazard_V = 0.05

const verdicts: Record<TrimVerdict, Verdict> = {
  'within tolerance': 'go',
  'charges low': 'go with care',
  'charges high': 'go with care',
  faulty: 'do not charge',
}

export function judgedTrim(
  { pack, named }: JudgedPack,
  { error_V, verdict }: Trim,
  measured_V: number,
  { house, show }: Context,
): Answer {
  const chemistry = pack.chemistry
  const full_V = fullVoltage_V(chemistry, house)
  const setting_V = verdict === 'charges high' ? highestSetting_V(full_V, error_V) : full_V
  const above_V = measured_V - chemistry.full_V.value
  const above = above_V > trimTolerance_V.value + 1e-9
  const figure = figuresIn(show)
  const charge = chargeAtRest(chemistry, Math.min(measured_V, chemistry.full_V.value))
  return {
    verdict: above ? 'do not charge' : verdicts[verdict],
    headline: headline({ error_V, verdict }, measured_V, setting_V, above, show),
    figures: [
      {
        key: 'error',
        label: 'measured less shown, per cell',
        value: error_V,
        unit: 'V',
        text: signed(error_V, show),
      },
      figure.perCell('measuredPerCell', 'measured per cell', measured_V),
      ...(verdict === 'faulty'
        ? []
        : [figure.perCell('highestSetting', 'highest setting per cell', setting_V)]),
      chargeFigure('charge of a cell at the measured volts', charge, show),
    ],
    working: [
      `Error: ${show.number(measured_V, 3)} V − ${show.number(measured_V - error_V, 3)} V = ${signed(error_V, show)} per cell.`,
      `Tolerance ${show.number(trimTolerance_V.value, 2)} V (${cite(trimTolerance_V)}); faulty from ${show.number(faultyFrom_V.value, 1)} V (${cite(faultyFrom_V)}).`,
      `Highest setting: ${show.perCell(full_V)} less what the cells get too much, rounded down; full is ${show.perCell(chemistry.full_V.value)} (${cite(chemistry.full_V)}).`,
      ...houseLine(full_V, chemistry, show),
    ],
    cautions: trimCautions({
      ...(named && { pack }),
      ...(above_V > hazard_V && { refusal: 'overcharged cell' as const }),
    }),
  }
}

function headline(
  { error_V, verdict }: Trim,
  measured_V: number,
  setting_V: number,
  above: boolean,
  show: Show,
): string {
  const off = signed(error_V, show)
  const stop = above
    ? `Do not charge at this setting: it took the cells to ${show.number(measured_V, 2)} V, above full. `
    : ''
  switch (verdict) {
    case 'within tolerance':
      return `${stop}Leave the charger as it is: ${off} per cell is inside the tolerance.${above ? ` Set ${show.perCell(setting_V)} per cell at most.` : ''}`
    case 'faulty':
      return `${stop}Do not use this charger: it is ${off} per cell off. Check the cell count, the balance lead and the meter; if they are right, the charger is faulty.`
    case 'charges high':
      return `${stop}The cells get ${show.number(error_V, 3)} V more than the charger says: set ${show.perCell(setting_V)} per cell at most, or correct its calibration by that much.`
    case 'charges low':
      return `The cells get ${show.number(-error_V, 3)} V less than the charger says: no harm, the pack is only less full. Correct its calibration if it has one, and do not make up for it with a cutoff above full.`
  }
}

const signed = (value_V: number, show: Show): string =>
  `${value_V > 0 ? '+' : value_V < 0 ? '−' : ''}${show.number(Math.abs(value_V), 3)} V`
