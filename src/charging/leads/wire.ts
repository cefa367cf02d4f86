// Copper wire by American gauge: its size, its resistance, and how warm a current makes it.

import { firstWhere } from '../numbers/halving.ts'
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

/** What still air carries off a thin cylinder that lies in it. */
export const airCooling = published(
  'Churchill and Chu',
  'Churchill and Chu 1975, free convection from a horizontal cylinder; what is radiated comes on top',
)

/** Of what a black body would radiate. */
const emissivity = practice(0.9, 'rubber and plastic radiate nine tenths of what a black body does')

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

/** No lead lives so warm, in K: there its own warming has carried the resistance away with it. */
const beyond_K = 1000
/** Halvings that leave less than a millionth of a kelvin. */
const halvings = 40

/**
 * How much warmer than the air a long lead in still air grows, in K; Infinity where that has no end. What it makes,
 * I²R of the warm wire, equals what its surface gives off.
 */
export function wireRise_K(gauge: number, current_A: number, air_C: number, wall_mm = insulation_mm.value): number {
  if (currentAt_A(gauge, beyond_K, air_C, wall_mm) < current_A) return Number.POSITIVE_INFINITY
  return firstWhere(0, beyond_K, halvings, rise_K => currentAt_A(gauge, rise_K, air_C, wall_mm) >= current_A)
}

/** The current at which a long lead in still air grows as warm as it may, in A. */
export const mostCurrent_A = (gauge: number, air_C: number): number =>
  currentAt_A(gauge, mostRise_K.value, air_C, insulation_mm.value)

/** The current that keeps a lead so much warmer than the air. */
function currentAt_A(gauge: number, rise_K: number, air_C: number, wall_mm: number): number {
  const across_m = (wireDiameter_mm(gauge) + 2 * wall_mm) * 1e-3
  const given_W = rise_K * Math.PI * across_m * (convection_W(across_m, rise_K, air_C) + radiation_W(rise_K, air_C))
  return Math.sqrt(given_W / wireResistance_ohm(gauge, 1, air_C + rise_K))
}

const zero_K = 273.15
const stefanBoltzmann_W = 5.670374e-8
const gravity_mps2 = 9.80665
/** Of air: how much it spreads heat less than it spreads motion. */
const prandtl = 0.71
/** Of dry air at 0 °C and one atmosphere; both grow by a power of the temperature. */
const [conductivity_W, viscosity_m2ps] = [0.0241, 1.33e-5]
const [conductivityPower, viscosityPower] = [0.81, 1.77]

/** From each m² and kelvin, in W. */
function convection_W(across_m: number, rise_K: number, air_C: number): number {
  const film_K = zero_K + air_C + rise_K / 2
  const viscosity = viscosity_m2ps * (film_K / zero_K) ** viscosityPower
  const rayleigh = (gravity_mps2 * rise_K * across_m ** 3 * prandtl) / (film_K * viscosity ** 2)
  const nusselt = (0.6 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2
  return (nusselt * conductivity_W * (film_K / zero_K) ** conductivityPower) / across_m
}

function radiation_W(rise_K: number, air_C: number): number {
  const [air_K, lead_K] = [zero_K + air_C, zero_K + air_C + rise_K]
  return emissivity.value * stefanBoltzmann_W * (air_K + lead_K) * (air_K ** 2 + lead_K ** 2)
}
