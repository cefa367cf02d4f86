// The four chemistries, every number with where it comes from.

import type { Chemistry, ChemistryName, Cited, TemperatureBand, VoltageCurve } from './chemistry.ts'
import { highVoltagePouch, lcoPouch, liFeCells, liIonCells } from './published-curves.ts'

const practice = <T>(value: T, source: string): Cited<T> => ({ value, standing: 'common practice', source })
const published = <T>(value: T, source: string): Cited<T> => ({ value, standing: 'published', source })
const computed = <T>(value: T, source: string): Cited<T> => ({ value, standing: 'computed', source })

const jeita =
  'JEITA/BAJ guide of 20 April 2007 as reproduced in TI datasheets SLUSB10 fig. 6 and SLUSB09 fig. 5, adapted: half rate from 0 to 10 °C, full rate from 10 to 45 °C; closed outside the 0 to 45 °C charge window common to lithium-ion cell specifications'

/** JEITA bands: half of `rate_C` when cold, the whole of it to 45 °C, nothing outside. */
function bands(rate_C: number, maxPerCell_V: number): Cited<readonly TemperatureBand[]> {
  return published(
    [
      { from_C: 0, to_C: 10, maxRate_C: rate_C / 2, maxPerCell_V },
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

const sources = (curves: readonly Cited<VoltageCurve>[]) => curves.map(curve => curve.source).join('; ')

const restRule = 'common practice among pilots: land with a fifth left'
const prechargeChips =
  'Microchip MCP73831 (2.79 to 3.0 V, DS20001984), MCP73861 (2.8 to 2.85 V) and Maxim MAX8819 (3.0 V) datasheets'

const lipo: Chemistry = {
  name: 'LiPo',
  nominal_V: practice(3.7, 'printed on pack labels'),
  full_V: practice(4.2, 'cell makers and every balance charger'),
  storage_V: practice(3.85, 'pack makers say 3.80 to 3.85 V'),
  restFloor_V: practice(3.6, restRule),
  loadFloor_V: practice(3.4, 'low-voltage alarms are set to 3.3 to 3.5 V under load'),
  damage_V: practice(2.5, 'a LiPo that rests below 2.5 V is retired'),
  precharge_V: published(3.0, prechargeChips),
  recommendedRate_C: practice(1, 'pack makers: 1C unless the label says more'),
  highestRate_C: practice(2, 'common upper limit where the label gives none'),
  temperatureBands: bands(2, 4.2),
  curve: lcoPouch,
  resistance: computed(
    { series_ohmAh: 0.03, fast_ohmAh: 0.01, fast_s: 40, slow_ohmAh: 0.02, slow_s: 300 },
    'fitted on open charge runs',
  ),
  capacitySpread: computed(0.14, 'measured over nameplate capacity of the open cells'),
  resistanceSpread: computed(0.5, 'spread of published values in ohm·Ah'),
}

const lihv: Chemistry = {
  ...lipo,
  name: 'LiHV',
  nominal_V: practice(3.8, 'printed on pack labels'),
  full_V: practice(4.35, 'pack makers'),
  temperatureBands: bands(2, 4.35),
  curve: computed(between(3.0, 4.35, highVoltagePouch.value), highVoltagePouch.source),
  resistance: computed(
    { series_ohmAh: 0.05, fast_ohmAh: 0.02, fast_s: 40, slow_ohmAh: 0.03, slow_s: 300 },
    'fitted on open charge runs',
  ),
}

const liIon: Chemistry = {
  ...lipo,
  name: 'Li-ion',
  nominal_V: practice(3.6, 'printed on cell labels'),
  gentleFull_V: practice(4.1, 'a tenth of the capacity given up for longer life'),
  restFloor_V: practice(3.2, 'leaves about a twentieth'),
  loadFloor_V: practice(3.0, 'above the 2.5 V discharge end of cell datasheets'),
  damage_V: practice(
    2.5,
    'the discharge end of cell datasheets: a cell that rests below it was over-discharged',
  ),
  precharge_V: published(2.8, prechargeChips),
  recommendedRate_C: practice(0.5, 'standard charge of cell datasheets'),
  highestRate_C: practice(1, 'rapid charge of most cell datasheets; a datasheet may say less or more'),
  temperatureBands: bands(1, 4.2),
  curve: computed(between(3.0, 4.2, mean(liIonCells)), `mean of five: ${sources(liIonCells)}`),
  resistance: computed(
    { series_ohmAh: 0.08, fast_ohmAh: 0.03, fast_s: 40, slow_ohmAh: 0.09, slow_s: 400 },
    'fitted on open charge runs',
  ),
}

const liFe: Chemistry = {
  ...lipo,
  name: 'LiFe',
  nominal_V: practice(3.3, 'printed on pack labels (3.2 or 3.3 V)'),
  full_V: practice(3.6, 'cell makers: 3.60 to 3.65 V'),
  storage_V: practice(3.3, 'about half charge, on the flat part of the curve'),
  restFloor_V: practice(3.0, 'leaves about a twentieth'),
  loadFloor_V: practice(2.8, 'above the 2.0 to 2.5 V discharge end of cell datasheets'),
  damage_V: practice(2.0, 'the discharge end of cell datasheets'),
  precharge_V: practice(2.5, 'below the curve that a working cell keeps at rest'),
  recommendedRate_C: practice(1, 'standard charge of cell datasheets'),
  highestRate_C: practice(2, 'common upper limit where the label gives none'),
  temperatureBands: bands(2, 3.6),
  curve: computed(between(2.5, 3.6, mean(liFeCells)), `mean of two: ${sources(liFeCells)}`),
  resistance: computed(
    { series_ohmAh: 0.03, fast_ohmAh: 0.03, fast_s: 40, slow_ohmAh: 0.05, slow_s: 300 },
    'fitted on open charge runs',
  ),
}

export const chemistries: Readonly<Record<ChemistryName, Chemistry>> = {
  LiPo: lipo,
  LiHV: lihv,
  'Li-ion': liIon,
  LiFe: liFe,
}
