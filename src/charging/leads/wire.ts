// Copper wire by American gauge: its size, its resistance, and how warm a current makes it.

import { practice, published } from '../things/cited.ts'

/** Annealed copper at 20 °C, in ohm·m. */
export const copperResistivity_ohmm = published(1.7241e-8, 'IEC 60028, resistivity of annealed copper at 20 °C')

/** Change of copper's resistance for each kelvin from 20 °C. */
export const copperCoefficient_perK = published(
  0.00393,
  'IEC 60028, temperature coefficient of annealed copper at 20 °C',
)

/** Insulation about a flexible lead. */
export const insulation_mm = practice(0.8, 'flexible leads have about 0.8 mm of insulation')

/** Heat that a lead gives off to still air for each m² and kelvin, in W. */
export const airCooling_W = practice(
  10,
  'still air takes about 10 W from each m² and kelvin, by convection and radiation together',
)

/** A lead this much warmer than the air about it is at its limit, in K. */
export const mostRise_K = practice(30, 'a lead may grow hand-warm, 30 K above the air')
export const thickestGauge = 0
export const thinnestGauge = 40

/** Diameter of the solid conductor, in mm, for gauges 0 to 40: the series of ASTM B258. */
export const wireDiameter_mm = (gauge: number): number => 0.127 * 92 ** ((36 - gauge) / 39)

/** Cross-section of the conductor, in mm². */
export const wireArea_mm2 = (gauge: number): number => (Math.PI / 4) * wireDiameter_mm(gauge) ** 2

/** Resistance of one conductor `length_m` long, in ohm, at a wire temperature of -50 to 150 °C. */
export function wireResistance_ohm(gauge: number, length_m: number, temperature_C = 20): number {
  const at20_ohm = (copperResistivity_ohmm.value * length_m) / (wireArea_mm2(gauge) * 1e-6)
  return at20_ohm * (1 + copperCoefficient_perK.value * (temperature_C - 20))
}

/**
 * How much warmer than the air a long lead in still air grows, in K; Infinity where its own warming carries
 * the resistance away with it. What it makes, I²R of the warm wire, equals what its surface gives off.
 */
export function wireRise_K(gauge: number, current_A: number, air_C: number): number {
  const cold_K = (current_A ** 2 * wireResistance_ohm(gauge, 1, air_C)) / coolingPerMetre_W(gauge)
  const perK = warmingPerK(air_C)
  return cold_K * perK < 1 ? cold_K / (1 - cold_K * perK) : Number.POSITIVE_INFINITY
}

/** The current at which a long lead in still air grows as warm as it may, in A. */
export function mostCurrent_A(gauge: number, air_C: number): number {
  const cold_K = mostRise_K.value / (1 + mostRise_K.value * warmingPerK(air_C))
  return Math.sqrt((cold_K * coolingPerMetre_W(gauge)) / wireResistance_ohm(gauge, 1, air_C))
}

/** What a metre of one wire gives off for each kelvin above the air. */
const coolingPerMetre_W = (gauge: number): number =>
  airCooling_W.value * Math.PI * (wireDiameter_mm(gauge) + 2 * insulation_mm.value) * 1e-3

/** How the resistance grows for each kelvin, as a share of that in the air. */
const warmingPerK = (air_C: number): number =>
  copperCoefficient_perK.value / (1 + copperCoefficient_perK.value * (air_C - 20))
