// The four chemistries, every number with where it comes from.

import type { Chemistry, Cited, ResistanceModel, TemperatureBand, VoltageCurve } from './chemistry.ts'
import { computed, practice, published } from './cited.ts'
import {
  chargeOf4V20Cells,
  highVoltagePhoneCells,
  highVoltagePouch,
  lcoPouch,
  liFeCells,
  liIonCells,
} from './published-curves.ts'

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

/**
 * A resistance shared out among the circuit's parts. One sharing serves all chemistries: it brings the times of
 * all fitted charges within 5 %, and it lets a reading of a few seconds see half of the whole, as those charges
 * ask. They tell the parts apart only loosely: tests/outside/fit-resistance.ts prints how other sharings do.
 */
function shared(total_ohmAh: number, source: string): Cited<ResistanceModel> {
  const model = {
    series_ohmAh: 0.4 * total_ohmAh,
    fast_ohmAh: 0.1 * total_ohmAh,
    fast_s: 40,
    slow_ohmAh: 0.5 * total_ohmAh,
    slow_s: 200,
  }
  return computed(model, source)
}

const sources = (curves: readonly Cited<VoltageCurve>[]) => curves.map(curve => curve.source).join('; ')
const prechargeChips =
  'Microchip MCP73831 (2.79 to 3.0 V, DS20001984), MCP73861 (2.8 to 2.85 V) and Maxim MAX8819 (3.0 V) datasheets'

const pouches: Chemistry['measuredResistance_ohmAh'] = computed(
  { low: 0.04, high: 0.137 },
  'high-rate pouch 0.04 to 0.056 from its measured charges, power pouch 0.0495 (Ecker et al. 2015), energy pouch 0.12 to 0.137 (Ai et al. 2020)',
)

const cans: Chemistry['measuredResistance_ohmAh'] = computed(
  { low: 0.17, high: 0.29 },
  'NMC 18650 0.17 to 0.22 and LCO prismatic 0.25 to 0.29, from their measured charges',
)

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
  curve: lcoPouch,
  cells: chargeOf4V20Cells,
  measuredResistance_ohmAh: pouches,
  resistance: shared(
    0.05,
    'high-rate pouches: 0.0495 ohm·Ah (Ecker et al. 2015), 0.04 to 0.06 from measured 1C and 3C charges (SAE 2023-01-0522)',
  ),
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
  curve: computed(between(3.0, 4.35, highVoltagePouch.value), highVoltagePouch.source),
  cells: [highVoltagePouch, highVoltagePhoneCells],
  resistance: shared(
    0.08,
    'between 0.07 ohm·Ah from measured C/3 charges (SINTEF SLPBA842124HV, Zenodo 17295469) and 0.12 of an energy pouch (Ai et al. 2020)',
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
  curve: computed(between(3.0, 4.2, mean(liIonCells)), `mean of five: ${sources(liIonCells)}`),
  measuredResistance_ohmAh: cans,
  resistance: shared(
    0.2,
    'measured charges: 0.18 ohm·Ah for an NMC 18650 (doi:10.17632/cp3473x7xv.3), 0.25 for a LiCoO2 prismatic (CALCE CS2)',
  ),
}

export const liFe: Chemistry = {
  ...lipo,
  name: 'LiFe',
  written: ['li-fe', 'li-fe-po', 'li-fe-po4', 'lfp', 'lithium iron phosphate'],
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
  curve: computed(between(2.5, 3.6, mean(liFeCells)), `mean of two: ${sources(liFeCells)}`),
  cells: liFeCells,
  measuredResistance_ohmAh: undefined,
  resistance: shared(
    0.13,
    'volts above the open-circuit curve halfway through measured C/3 charges of a 26650 (Plett, ESC toolbox)',
  ),
}

/** In the order in which they are listed; the first is meant where none is said. */
export const chemistries: readonly [Chemistry, ...Chemistry[]] = [lipo, lihv, liIon, liFe]
export const chemistryNamed = (name: string): Chemistry | undefined =>
  chemistries.find(chemistry => chemistry.name === name)
