// The cells that a pack may be made of, each with the charger that may stand beside it: what a band is taken over.

import { type CellClass, laterAfter, type Spread } from '../things/cell-class.ts'
import type { Chemistry } from '../things/chemistry.ts'
import { computed } from '../things/cited.ts'
import { interpolate, slopeBelowEmpty_V } from '../things/curve.ts'
import type { State } from '../things/level.ts'
import { classesOf, laterParts, readingOf } from './cell.ts'
import type { ChargeRequest } from './charge.ts'
import { draws, shareBelow } from './design.ts'
import type { QuickCell, QuickLaw } from './quick-run.ts'
import { agedBy_ohmAh, growth_ohmAh, newShare } from './resistance.ts'
import { termsOf } from './terms.ts'

/** One of the cells that a pack may be made of, charged as it may be. */
export interface Member {
  readonly cell: QuickCell
  readonly law: QuickLaw
  /** What the model itself may be off, as a factor on the times. */
  readonly timeFactor: number
}

/** Share of the label that packs in use hold, at standard normal numbers: a long tail to the tired ones. */
const capacityShares = computed(
  { at: [-2.4, -1.6, -0.7, 0, 0.7, 1.6, 2.4], share: [0.7, 0.82, 0.915, 0.96, 1.01, 1.1, 1.14] },
  'cells of nine open datasets: new 0.90 to 1.11 of their label; packs in use lose up to a fifth before they retire',
)

/** Two of three lie within these, where the quantity was told. */
const errors = {
  /** Of a measured capacity and of a reading, as shares. */
  capacity: 0.016,
  reading: 0.08,
  /** Of a charge that was told. */
  soc: 0.01,
  /** Of a charger: current as a share, volts a cell. */
  current: 0.012,
  cutoff_V: 0.005,
  /** Of the model: of the times, and where nobody measured of the temperature, in °C. */
  time: 0.012,
  temperature_C: 5,
  /** Of the time of the slow part and of how much a new cell holds. */
  slow_s: 0.3,
  newShare: 0.03,
} as const

/** Shares of chargers that end at a tenth of the set current, at a tenth of the capacity, at a twentieth of the current. */
const ends = [0.6, 0.8] as const

/** Free convection and radiation of a small body, in W a square metre and K; its density and heat. */
const surface_WperM2K = 10
const density_kgPerM3 = 2300
const heat_JperKgK = 1000

const atRoom_C = 23

/** One member for each draw of the design. */
export function membersOf(request: ChargeRequest): Member[] {
  const { pack, temperature_C, measuredCapacity_Ah } = request
  const { chemistry, series, capacity_Ah: label_Ah } = pack
  const reading_ohmAh = readingOf(pack, temperature_C ?? atRoom_C)
  const classes = classesOf(pack, reading_ohmAh)
  const curves = curvesOf(chemistry)
  const mass_kg = (series * label_Ah * chemistry.nominal_V.value) / chemistry.energyPerMass_Whkg.value
  const cooled = {
    heat_JperK: (mass_kg * heat_JperKgK) / series,
    loss_WperK: (surface_WperM2K * 6 * (mass_kg / density_kgPerM3) ** (2 / 3)) / series,
  }
  return draws.map((draw, index) => {
    const [capacity, atOnce, later, slow, kind, start, current, cutoff, end, warmth, growth, model] = draw as Twelve
    const share =
      measuredCapacity_Ah === undefined
        ? interpolate(capacityShares.value.at, capacityShares.value.share, capacity)
        : (measuredCapacity_Ah / label_Ah) * (1 + errors.capacity * capacity)
    const made = classAt(classes, shareBelow(kind))
    const aged_ohmAh = agedBy_ohmAh(
      share,
      newShare.value + errors.newShare * model,
      growth_ohmAh.value.middle * growth_ohmAh.value.times ** growth,
    )
    const series_ohm =
      (reading_ohmAh === undefined ? drawn(made.atOnce_ohmAh, atOnce) : reading_ohmAh * (1 + errors.reading * atOnce)) /
      label_Ah
    const later_ohm = (drawn(made.later_ohmAh, later) * laterAfter(made, reading_ohmAh) + aged_ohmAh) / label_Ah
    const { fastShare, fast_s, slow_s } = laterParts.value
    const curve_V = curves[index] as Float64Array
    const asked = {
      ...request,
      current_A: request.current_A * (1 + errors.current * current),
      termination_A: request.termination_A ?? endCurrent_A(request, shareBelow(end)),
    }
    return {
      cell: {
        capacity_Ah: share * label_Ah,
        curve_V,
        series_ohm,
        fast_ohm: fastShare * later_ohm,
        fast_s,
        slow_ohm: (1 - fastShare) * later_ohm,
        slow_s: slow_s * Math.exp(errors.slow_s * slow),
        ambient_C: temperature_C ?? atRoom_C + errors.temperature_C * warmth,
        ...cooled,
      },
      law: {
        ...termsOf(asked, errors.cutoff_V * cutoff),
        startSoc: startOf(chemistry, request.from, curve_V, start),
        belowEmpty_V: slopeBelowEmpty_V(chemistry),
      },
      timeFactor: 1 + errors.time * model,
    }
  })
}

type Twelve = readonly [number, number, number, number, number, number, number, number, number, number, number, number]

const drawn = ({ middle, times }: Spread, z: number): number => middle * times ** z

function classAt(classes: readonly CellClass[], share: number): CellClass {
  let left = share
  for (const one of classes) {
    if (left <= one.share) return one
    left -= one.share
  }
  return classes.at(-1) as CellClass
}

function endCurrent_A({ current_A, pack }: ChargeRequest, share: number): number {
  if (share < ends[0]) return current_A / 10
  return share < ends[1] ? Math.min(pack.capacity_Ah, current_A) / 10 : current_A / 20
}

function startOf(chemistry: Chemistry, from: State, curve_V: Float64Array, z: number): number {
  if (from.kind === 'soc') return Math.min(1, Math.max(0, from.soc + errors.soc * z))
  const rest_V = from.perCell_V + chemistry.restSpread_V.value * z
  const empty_V = curve_V[0] as number
  if (rest_V < empty_V) return (rest_V - empty_V) / slopeBelowEmpty_V(chemistry)
  const last = curve_V.length - 1
  let i = 0
  while (i < last - 1 && (curve_V[i + 1] as number) <= rest_V) i++
  const left_V = curve_V[i] as number
  return Math.min(1, (i + (rest_V - left_V) / ((curve_V[i + 1] as number) - left_V)) / last)
}

/** Points of a curve at equal steps of charge. */
const points = 41
const curvesKnown = new WeakMap<Chemistry, readonly Float64Array[]>()

/** A curve for each draw: between the chemistry's own and those of its published cells, ends where its own has them. */
function curvesOf(chemistry: Chemistry): readonly Float64Array[] {
  const known = curvesKnown.get(chemistry)
  if (known) return known
  const own = chemistry.curve.value
  const ends_V = [own.perCell_V[0] as number, own.perCell_V.at(-1) as number] as const
  const made = draws.map((_, index) => {
    // In turn through the cells, and at even distances from the chemistry's own.
    const other = chemistry.curves[index % chemistry.curves.length]?.value ?? own
    const share = (index * 0.618034) % 1
    const otherV = [ends_V[0], ...other.perCell_V.slice(1, -1), ends_V[1]]
    return Float64Array.from({ length: points }, (_, point) => {
      const soc = point / (points - 1)
      const own_V = interpolate(own.soc, own.perCell_V, soc)
      return own_V + share * (interpolate(other.soc, otherV, soc) - own_V)
    })
  })
  curvesKnown.set(chemistry, made)
  return made
}
