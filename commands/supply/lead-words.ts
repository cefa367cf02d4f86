// A lead's figures and how they came about.

import type { Figure } from '../../src/assistant/reply.ts'
import type { Lead, LeadLoad } from '../../src/charging/sources/lead.ts'
import {
  airCooling_W,
  copperCoefficient_perK,
  copperResistivity_ohmm,
  insulation_mm,
  mostRise_K,
  wireArea_mm2,
  wireDiameter_mm,
  wireResistance_ohm,
} from '../../src/charging/things/wire.ts'
import type { Show } from '../../src/ground/show.ts'
import { writeGauge } from '../../src/language/quantities/quantities.ts'
import { figuresIn } from '../shared/figure.ts'
import { cite } from '../shared/working.ts'

export const gaugeName = writeGauge

/** Thousandths of a volt matter in a lead. */
const finely = (value_V: number, show: Show): string => `${show.number(value_V, 3)} V`

export function leadFigures(
  gauge: number,
  { current_A }: LeadLoad,
  lead: Lead,
  voltage_V: number | undefined,
  show: Show,
): Figure[] {
  const figure = figuresIn(show)
  const area_mm2 = wireArea_mm2(gauge)
  return [
    { key: 'gauge', label: 'wire', value: gauge, unit: 'count', text: gaugeName(gauge) },
    {
      key: 'area',
      label: 'cross-section',
      value: area_mm2,
      unit: 'mm²',
      text: `${show.number(area_mm2, 2)} mm²`,
    },
    figure.resistance('resistance', 'resistance, out and back', lead.resistance_ohm),
    {
      key: 'drop',
      label: 'drop',
      value: lead.drop_V,
      unit: 'V',
      low: lead.drop_V,
      ...(Number.isFinite(lead.warmDrop_V) ? { high: lead.warmDrop_V } : {}),
      text: Number.isFinite(lead.warmDrop_V)
        ? `${finely(lead.drop_V, show)} cold, ${finely(lead.warmDrop_V, show)} warm`
        : `${finely(lead.drop_V, show)} cold`,
    },
    figure.power(
      'heat',
      'heat',
      Number.isFinite(lead.warmHeat_W) ? lead.warmHeat_W : current_A * lead.drop_V,
    ),
    ...(Number.isFinite(lead.rise_K)
      ? [figure.temperature('rise', 'warmer than the air by', lead.rise_K)]
      : []),
    ...(voltage_V === undefined || !Number.isFinite(lead.warmDrop_V)
      ? []
      : [figure.voltage('chargerSees', 'the charger sees', Math.max(0, voltage_V - lead.warmDrop_V))]),
  ]
}

export function leadWorking(
  gauge: number,
  { length_m, current_A, air_C }: LeadLoad,
  lead: Lead,
  show: Show,
): string[] {
  const number = show.number
  const meter_mohm = wireResistance_ohm(gauge, 1, 20) * 1000
  return [
    `${gaugeName(gauge)}: diameter 0.127 mm × 92^((36 − ${gauge}) ÷ 39) = ${number(wireDiameter_mm(gauge), 3)} mm (ASTM B258), ${number(wireArea_mm2(gauge), 2)} mm².`,
    `Resistance: ${number(meter_mohm, 2)} mΩ a metre at 20 °C (${cite(copperResistivity_ohmm)}), × (1 + ${number(copperCoefficient_perK.value, 5)} × (${number(air_C, 0)} − 20)) × 2 × ${number(length_m, 2)} m = ${show.resistance(lead.resistance_ohm)}.`,
    `Drop: ${show.current(current_A)} × ${show.resistance(lead.resistance_ohm)} = ${finely(lead.drop_V, show)} while the wire is cold. Flexible wire of the same gauge may have 5 % more (common practice).`,
    `Warming: the heat of each metre leaves through its surface (${cite(airCooling_W)}; ${cite(insulation_mm)}). Limit ${show.temperature(mostRise_K.value)} above the air (${cite(mostRise_K)}); an estimate for a straight lead in still air: a coiled or covered one grows warmer.`,
  ]
}
