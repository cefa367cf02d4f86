// The cells that a pack may be made of, each with the charger that may stand beside it: what a band is taken over.

import { endAt } from '../things/charge-end.ts'
import type { Chemistry } from '../things/chemistry.ts'
import { slopeBelowEmpty_V } from '../things/curve.ts'
import type { Learned, Traits } from '../things/learned.ts'
import type { State } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'
import type { ChargeRequest } from './charge.ts'
import { drawCount, drawnShares, draws } from './design.ts'
import { curvesOf, socOn } from './member-curves.ts'
import type { QuickCell, QuickLaw } from './quick-cell.ts'
import { termsOf } from './terms.ts'
import { likelyTraits, typicalTraits } from './traits.ts'

/** One of the cells that a pack may be made of, charged as it may be. */
export interface Member {
  readonly cell: QuickCell
  readonly law: QuickLaw
  /** What the model itself may be off, as a factor on the times. */
  readonly timeFactor: number
}

/** Two of three lie within these. */
const errors = {
  /** Of a charge that was told. */
  soc: 0.01,
  /** Of a charger: current as a share, volts a cell. */
  current: 0.012,
  cutoff_V: 0.005,
  /** Of the temperature where nobody measured, in °C. */
  temperature_C: 5,
  /** Of the times by the model; of a pack at a rate that it was charged at before; and more for each time e as fast. */
  time: 0.018,
  timeLearned: 0.004,
  timePerRate: 0.025,
} as const

/** Free convection and radiation of a small body, in W a square metre and K; its density and heat. */
const surface_WperM2K = 10
const density_kgPerM3 = 2300
const heat_JperKgK = 1000

const atRoom_C = 23

/**
 * One member for each draw of the design. What is known by chance of one charge only, its start and its warmth, is drawn
 * anew for each `turn`.
 */
export function membersOf(request: ChargeRequest, traits: readonly Traits[], turn = 0): Member[] {
  const { pack, temperature_C, learned, current_A } = request
  const { chemistry, capacity_Ah: label_Ah } = pack
  const { drawn: curves } = curvesOf(chemistry)
  const body = bodyOf(pack)
  const timeError = learned ? timeErrorOf(learned, current_A / label_Ah) : errors.time
  const belowEmpty_V = slopeBelowEmpty_V(chemistry)
  return draws.map((draw, index) => {
    const { 6: current = 0, 7: cutoff = 0, 9: model = 0 } = draw
    const { 10: start = 0, 11: warmth = 0 } = draws[(index + 17 * turn) % drawCount] as typeof draw
    const curve_V = curves[index] as Float64Array
    const set_A = current_A * (1 + errors.current * current)
    const end = request.end ?? endAt(drawnShares[index]?.[8] ?? 0)
    const ambient_C = temperature_C ?? atRoom_C + errors.temperature_C * warmth
    return {
      cell: cellOf(traits[index] as Traits, label_Ah, curve_V, ambient_C, body),
      law: {
        ...termsOf(request, { current_A: set_A, end, cutoffError_V: errors.cutoff_V * cutoff }),
        startSoc: startOf(chemistry, request.from, curve_V, start),
        belowEmpty_V,
      },
      timeFactor: 1 + timeError * model,
    }
  })
}

/** The middle of the members, as it is charged from there where nothing is off. */
export function middleMember(
  request: ChargeRequest,
  traits: readonly Traits[],
  startSoc: number,
): Pick<Member, 'cell' | 'law'> {
  const { pack, temperature_C } = request
  return {
    cell: cellOf(
      typicalTraits(traits),
      pack.capacity_Ah,
      curvesOf(pack.chemistry).own,
      temperature_C ?? atRoom_C,
      bodyOf(pack),
    ),
    law: { ...termsOf(request), startSoc, belowEmpty_V: slopeBelowEmpty_V(pack.chemistry) },
  }
}

/** What the cells may be like, by draw. */
export const traitsOf = ({ pack, temperature_C, measuredCapacity_Ah, learned }: ChargeRequest): readonly Traits[] =>
  learned?.traits ?? likelyTraits(pack, temperature_C ?? atRoom_C, measuredCapacity_Ah)

const cellOf = (
  { share, atOnce_ohmAh, diffusion_h }: Traits,
  label_Ah: number,
  curve_V: Float64Array,
  ambient_C: number,
  { heat_JperK, loss_WperK }: Body,
): QuickCell => ({
  capacity_Ah: share * label_Ah,
  curve_V,
  series_ohm: atOnce_ohmAh / label_Ah,
  diffusion_s: diffusion_h * 3600,
  ambient_C,
  heat_JperK,
  loss_WperK,
})

type Body = Pick<QuickCell, 'heat_JperK' | 'loss_WperK'>

/** How a cell position of the pack warms and gives off heat: by its share of mass and surface. */
function bodyOf({ chemistry, series, capacity_Ah }: Pack): Body {
  const mass_kg = (series * capacity_Ah * chemistry.nominal_V.value) / chemistry.energyPerMass_Whkg.value
  return {
    heat_JperK: (mass_kg * heat_JperKgK) / series,
    loss_WperK: (surface_WperM2K * 6 * (mass_kg / density_kgPerM3) ** (2 / 3)) / series,
  }
}

/** The further from the rates of the log, the less it says of this one. */
function timeErrorOf({ rates_C }: Learned, rate_C: number): number {
  const apart = Math.min(...rates_C.map(known_C => Math.abs(Math.log(rate_C / known_C))))
  return errors.timeLearned + errors.timePerRate * apart
}

/** Told in percent it is off by little, and not at all where it was emptied to measure it. */
function startOf(chemistry: Chemistry, from: State, curve_V: Float64Array, z: number): number {
  if (from.kind === 'rest') return socOn(curve_V, from.perCell_V + chemistry.restSpread_V.value * z, chemistry)
  return from.soc === 0 ? 0 : Math.min(1, Math.max(0, from.soc + errors.soc * z))
}
