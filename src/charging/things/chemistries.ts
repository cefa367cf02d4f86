// The four chemistries, every number with where it comes from.

import type { CellClass, CellClassName } from './cell-class.ts'
import type { Chemistry, Cited, TemperatureBand, VoltageCurve } from './chemistry.ts'
import { computed, practice, published } from './cited.ts'
import * as curves from './published-curves.ts'

const jeita =
  'JEITA/BAJ guide of 20 April 2007 as reproduced in TI datasheets SLUSB10 fig. 6 and SLUSB09 fig. 5, and the cold charge rates of LiFePO4 cell datasheets: 0.2C from 0 to 5 °C, 0.5C from 5 to 10 °C, full rate from 10 to 45 °C; closed outside the 0 to 45 °C charge window common to lithium-ion cell specifications'

/** Bands of cell temperature: gently when cold whatever the label says, the whole of `rate_C` to 45 °C, nothing outside. */
function bands(rate_C: number, maxPerCell_V: number): Cited<readonly TemperatureBand[]> {
  return computed(
    [
      { from_C: 0, to_C: 5, maxRate_C: 0.2, maxPerCell_V },
      { from_C: 5, to_C: 10, maxRate_C: 0.5, maxPerCell_V },
      { from_C: 10, to_C: 45, maxRate_C: rate_C, maxPerCell_V },
    ],
    jeita,
  )
}

/** A curve with its ends moved to the volts at which this chemistry counts as empty and full. */
function between(empty_V: number, full_V: number, curve: VoltageCurve): VoltageCurve {
  return { soc: curve.soc, perCell_V: [empty_V, ...curve.perCell_V.slice(1, -1), full_V] }
}

function mean(curves: readonly Cited<VoltageCurve>[]): VoltageCurve {
  const first = curves[0]?.value as VoltageCurve
  const perCell_V = first.perCell_V.map(
    (_, i) => curves.reduce((sum, curve) => sum + (curve.value.perCell_V[i] as number), 0) / curves.length,
  )
  return { soc: first.soc, perCell_V }
}

/** A class with its resistance in ohm·Ah and its diffusion in hours at 25 °C, each with the factor that two of three stay within. */
const cellClass = (
  name: CellClassName,
  share: number,
  [atOnce, atOnceTimes]: readonly [number, number],
  [diffusion, diffusionTimes]: readonly [number, number],
  measuredCells: number,
): CellClass => ({
  name,
  share,
  atOnce_ohmAh: { middle: atOnce, times: atOnceTimes },
  diffusion_h: { middle: diffusion, times: diffusionTimes },
  measuredCells,
})

const sources = (curves: readonly Cited<VoltageCurve>[]) => curves.map(curve => curve.source).join('; ')
const prechargeChips =
  'Microchip MCP73831 (2.79 to 3.0 V, DS20001984), MCP73861 (2.8 to 2.85 V) and Maxim MAX8819 (3.0 V) datasheets'

export const lipo: Chemistry = {
  name: 'LiPo',
  written: ['li-po', 'li-poly', 'lithium polymer'],
  nominal_V: practice(3.7, 'printed on pack labels'),
  full_V: practice(4.2, 'cell makers and every balance charger'),
  storage_V: practice(3.85, 'pack makers say 3.80 to 3.85 V'),
  restFloor_V: practice(3.6, 'pilots land at 3.6 to 3.7 V rested; about a tenth is left'),
  loadFloor_V: practice(3.4, 'low-voltage alarms are set to 3.3 to 3.5 V under load'),
  damage_V: practice(2.5, 'a LiPo that rests below 2.5 V is retired'),
  precharge_V: published(3.0, prechargeChips),
  recommendedRate_C: practice(1, '1C unless the label says more'),
  highestRate_C: practice(2, 'the most where no label says'),
  temperatureBands: bands(2, 4.2),
  curve: curves.lcoPouch,
  cells: curves.chargeOf4V20Cells,
  curves: curves.pouchCells,
  classes: computed(
    [cellClass('high drain', 0.7, [0.027, 1.35], [0.03, 1.6], 1), cellClass('energy', 0.3, [0.05, 1.4], [0.1, 1.8], 0)],
    'high drain: measured 1C and 3C charges of a pouch (SAE 2023-01-0522) and a power pouch (Ecker et al. 2015); energy: not measured, by a published parameter set (Ai et al. 2020)',
  ),
  restSpread_V: practice(0.006, 'a cell checker is good to about 0.01 V; rested minutes, not hours'),
  energyPerMass_Whkg: practice(160, 'LiPo cells weigh about 6 g a watt-hour'),
  capacitySpread: computed(
    0.18,
    'six open cells hold 13 % less to 11 % more than their label; packs in use lose up to a fifth before they retire',
  ),
  resistanceSpread: computed(0.5, 'published values in ohm·Ah of one chemistry differ by a factor of two and more'),
}

export const lihv: Chemistry = {
  ...lipo,
  name: 'LiHV',
  written: ['li-hv', 'hv', 'li-po-hv', 'hv-li-po'],
  onlyAsLabelled: ['HV'],
  nominal_V: practice(3.8, 'printed on pack labels'),
  full_V: practice(4.35, 'pack makers'),
  temperatureBands: bands(2, 4.35),
  curve: computed(between(3.0, 4.35, curves.highVoltagePouch.value), curves.highVoltagePouch.source),
  cells: [curves.highVoltagePouch, curves.highVoltagePhoneCells],
  curves: [curves.highVoltagePouch, curves.highVoltagePhoneCells],
  classes: computed(
    [
      cellClass('high drain', 0.6, [0.035, 1.35], [0.02, 1.8], 1),
      cellClass('energy', 0.4, [0.06, 1.4], [0.07, 1.6], 0),
    ],
    'high drain: measured C/3 charges of a pouch (SINTEF SLPBA842124HV, Zenodo 17295469); energy: not measured, by a published parameter set (Ai et al. 2020)',
  ),
}

export const liIon: Chemistry = {
  ...lipo,
  name: 'Li-ion',
  written: ['li-ion', 'lithium ion', 'ion'],
  roundCells: true,
  nominal_V: practice(3.6, 'printed on cell labels'),
  storage_V: practice(3.7, 'cell makers store at 40 to 50 % charge'),
  gentleFull_V: practice(4.1, 'a tenth of the capacity given up for longer life'),
  restFloor_V: practice(3.2, 'leaves about a twentieth'),
  loadFloor_V: practice(3.0, 'above the 2.5 V discharge end of cell datasheets'),
  damage_V: practice(2.5, 'the discharge end of cell datasheets: a cell that rests below it was over-discharged'),
  precharge_V: published(2.8, prechargeChips),
  recommendedRate_C: practice(0.5, 'standard charge of cell datasheets'),
  highestRate_C: practice(1, 'rapid charge of most cell datasheets; a datasheet may say less or more'),
  temperatureBands: bands(1, 4.2),
  curve: computed(between(3.0, 4.2, mean(curves.liIonCells)), `mean of five: ${sources(curves.liIonCells)}`),
  curves: curves.liIonCells,
  classes: computed(
    [
      cellClass('high drain', 0.5, [0.06, 1.35], [0.085, 1.5], 2),
      cellClass('energy', 0.5, [0.12, 1.35], [0.16, 1.55], 4),
    ],
    'measured charges: high drain of an NMC 18650 (doi:10.17632/cp3473x7xv.3) and a 21700 (HKUST H24); energy of LiCoO2 prismatics (CALCE CS2), an NCA 21700 (BEEP) and an 18650 (NASA PCoE B0005); its spread spans two published parameter sets (Chen et al. 2020, Mohtat et al. 2020)',
  ),
  energyPerMass_Whkg: practice(220, 'an 18650 of 3 Ah weighs about 48 g'),
}

export const liFe: Chemistry = {
  ...lipo,
  name: 'LiFe',
  written: ['li-fe', 'li-fe-po', 'li-fe-po4', 'lfp', 'lithium iron phosphate', 'lithium iron'],
  nominal_V: practice(3.3, 'printed on pack labels (3.2 or 3.3 V)'),
  full_V: practice(3.6, 'cell makers: 3.60 to 3.65 V'),
  storage_V: practice(3.3, 'about half charge, on the flat part of the curve'),
  restFloor_V: practice(3.0, 'leaves about a twentieth'),
  loadFloor_V: practice(2.8, 'above the 2.0 to 2.5 V discharge end of cell datasheets'),
  damage_V: practice(2.0, 'the discharge end of cell datasheets'),
  precharge_V: practice(2.5, 'below the curve that a working cell keeps at rest'),
  recommendedRate_C: practice(1, 'standard charge of cell datasheets'),
  highestRate_C: practice(2, 'the most where no label says'),
  temperatureBands: bands(2, 3.6),
  curve: computed(between(2.5, 3.6, mean(curves.liFeCells)), `mean of two: ${sources(curves.liFeCells)}`),
  cells: curves.liFeCells,
  curves: curves.liFeCells,
  classes: computed(
    [cellClass('high drain', 0.6, [0.022, 1.4], [0.03, 2], 1), cellClass('energy', 0.4, [0.05, 1.5], [0.03, 2.5], 0)],
    'high drain: steps and C/3 charges of a 26650 (Plett, ESC toolbox); energy: not measured, by that and a published parameter set (Prada et al. 2013)',
  ),
  restSpread_V: practice(0.012, 'LiFePO4 cells rest 10 to 25 mV lower after a discharge than after a charge'),
  energyPerMass_Whkg: practice(105, 'a 26650 of 2.3 Ah weighs about 70 g'),
}

/** In the order in which they are listed; the first is meant where none is said. */
export const chemistries: readonly [Chemistry, ...Chemistry[]] = [lipo, lihv, liIon, liFe]
export const chemistryNamed = (name: string): Chemistry | undefined =>
  chemistries.find(chemistry => chemistry.name === name)
