// What bounds a charge: the cutoff, every limit on the current, and the current that label or chemistry wish for.
// It refuses nothing: the envelope judges from it, and only what that permits is computed on.

import type { Situation } from '../situation/situation.ts'
import type { Chemistry } from '../things/chemistry.ts'
import { fullVoltage_V, goalOf } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'
import { cutoffStepDown_V, efficiencyOf } from '../things/practice.ts'
import { largestStep_A } from '../things/steps.ts'
import { evening } from './balancing.ts'
import { type Input, inputOf } from './input.ts'
import type { Limit, LimitKind, Provenance } from './limit.ts'

/** Above this a charge rate on a label is not believed: it is the discharge rate in large print. */
export const believedRate_C = 5
/** A pack that was crashed and found sound takes no more. */
const afterCrash_C = 0.5
/** Volts that count as equal: a charger shows two decimals. */
const tolerance_V = 0.005
/** Where nobody measured: a room. */
const room_C = 25

export interface Cutoff {
  readonly perCell_V: number
  /** What was asked for, where something made it lower. */
  readonly asked_V: number
  readonly loweredBy: 'house' | 'charger' | 'temperature' | undefined
  /** How far below what is allowed the charger's next cutoff lies, in V; Infinity where it has none. */
  readonly missed_V: number
}

export interface Bounds {
  readonly cutoff: Cutoff
  readonly cutoffPack_V: number
  readonly efficiency: number
  /** What feeds the charger, where a source is known. */
  readonly input: Input | undefined
  readonly wanted_A: number
  readonly wantedRate_C: number
  readonly wantedFrom: Provenance
  /** Smallest first. */
  readonly limits: readonly [Limit, ...Limit[]]
  /** The most that may be asked for, where a label allows more than the chemistry's usual limit, in A. */
  readonly askable: Limit
}

const theLabel: Provenance = { source: 'the label' }
const cappedLabel: Provenance = { source: 'the label, held to the limit of the chemistry' }
const theBoard: Provenance = { source: 'what the others take where one comes unplugged', standing: 'common practice' }
const theCharger: Provenance = { source: 'the charger' }
const theSource: Provenance = { source: 'the source' }
const theShare: Provenance = { source: 'its share of the source' }
const theHouse: Provenance = { source: 'the rules of this club' }
const theCrash: Provenance = { source: 'a pack that was crashed goes gently', standing: 'common practice' }

/** The rate on the label as far as it can be one of charging, in C. */
export const labelRate_C = ({ labelRate_C: told_C }: Pack): number | undefined =>
  told_C !== undefined && told_C <= believedRate_C ? told_C : undefined

/** Bounds of charging `pack` in its situation, whatever may speak against it. */
export function boundsOf({ pack, ...situation }: Situation & { readonly pack: Pack }): Bounds {
  const { charger, temperature_C = room_C } = situation
  const { chemistry } = pack
  const band = bandAt(chemistry, temperature_C)
  const cutoff = cutoffOf(chemistry, situation, band.maxPerCell_V)
  const cutoffPack_V = cutoff.perCell_V * pack.series
  const efficiency = efficiencyOf(charger)
  const input = situation.source && inputOf({ ...situation, source: situation.source })
  const rates = rateLimits(pack, situation, band.maxRate_C)
  const limits = [...rates, ...powerLimits(situation, input, cutoffPack_V, efficiency)].toSorted(byValue)
  const labelled_C = labelRate_C(pack)
  const { recommendedRate_C, highestRate_C } = chemistry
  const held_C = labelled_C === undefined ? recommendedRate_C.value : Math.min(labelled_C, highestRate_C.value)
  const uneven = evening(situation.apart_V, recommendedRate_C.value)
  const usual_C = Math.min(held_C, band.maxRate_C)
  const isEvened = uneven !== undefined && uneven.rate_C < usual_C
  const wantedRate_C = isEvened ? uneven.rate_C : usual_C
  return {
    cutoff,
    cutoffPack_V,
    efficiency,
    input,
    wantedRate_C,
    wanted_A: wantedRate_C * pack.capacity_Ah,
    wantedFrom: isEvened
      ? uneven.from
      : labelled_C === undefined
        ? recommendedRate_C
        : labelled_C === held_C
          ? situation.board
            ? theBoard
            : theLabel
          : cappedLabel,
    limits: limits as [Limit, ...Limit[]],
    askable: (labelled_C === undefined ? rates : rates.filter(({ kind }) => kind !== 'chemistry')).toSorted(
      byValue,
    )[0] as Limit,
  }
}

const byValue = (one: Limit, other: Limit): number => one.value_A - other.value_A

/** The strictest of the bands that hold the temperature; beyond all of them the nearest one. */
function bandAt({ temperatureBands }: Chemistry, temperature_C: number) {
  const bands = temperatureBands.value
  const ends_C = bands.flatMap(({ from_C, to_C }) => [from_C, to_C])
  const held_C = Math.min(Math.max(...ends_C), Math.max(Math.min(...ends_C), temperature_C))
  const holding = bands.filter(({ from_C, to_C }) => held_C >= from_C && held_C <= to_C)
  return {
    maxRate_C: Math.min(...holding.map(band => band.maxRate_C)),
    maxPerCell_V: Math.min(...holding.map(band => band.maxPerCell_V)),
  }
}

/** Never above full; lowered by the house, by the temperature, or to the next one that the charger has. */
function cutoffOf(chemistry: Chemistry, { to, house, charger }: Omit<Situation, 'pack'>, warmest_V: number): Cutoff {
  const goal = goalOf(to ?? { kind: 'named', name: 'full' }, chemistry, house)
  const asked_V = goal.kind === 'voltage' ? goal.perCell_V : goal.cutoffPerCell_V
  const house_V = fullVoltage_V(chemistry, house)
  const allowed_V = Math.min(asked_V, house_V, warmest_V, chemistry.full_V.value)
  const below_V = (charger?.cutoffs_V ?? [allowed_V]).filter(cutoff_V => cutoff_V <= allowed_V + 1e-9)
  const next_V = Math.max(Number.NEGATIVE_INFINITY, ...below_V)
  const missed_V = Math.max(0, allowed_V - next_V)
  const isFit = missed_V <= cutoffStepDown_V.value + 1e-9
  const perCell_V = isFit ? Math.min(next_V, allowed_V) : allowed_V
  const loweredBy =
    isFit && missed_V > tolerance_V
      ? 'charger'
      : allowed_V < asked_V && allowed_V === house_V
        ? 'house'
        : allowed_V < asked_V && allowed_V === warmest_V
          ? 'temperature'
          : undefined
  return { perCell_V, asked_V, loweredBy, missed_V }
}

/** What grows with the pack. */
function rateLimits(pack: Pack, { house, dangers, board }: Omit<Situation, 'pack'>, warm_C: number): Limit[] {
  const { chemistry, capacity_Ah } = pack
  const { highestRate_C, temperatureBands } = chemistry
  const byRate = (kind: LimitKind, rate_C: number | undefined, from: Provenance): Limit | undefined =>
    rate_C === undefined ? undefined : { kind, rate_C, value_A: rate_C * capacity_Ah, from }
  const full_C = Math.max(...temperatureBands.value.map(({ maxRate_C }) => maxRate_C))
  return [
    byRate('chemistry', highestRate_C.value, highestRate_C),
    byRate(board ? 'board' : 'label', labelRate_C(pack), board ? theBoard : theLabel),
    byRate('house', house.maxRate_C?.[chemistry.name], theHouse),
    byRate('temperature', warm_C < full_C ? warm_C : undefined, temperatureBands),
    byRate('condition', dangers.includes('crashed') ? afterCrash_C : undefined, theCrash),
  ].filter(limit => limit !== undefined)
}

/** What charger and source give, whatever the pack. */
function powerLimits(
  { charger, sourceShare_W = Number.POSITIVE_INFINITY }: Omit<Situation, 'pack'>,
  input: Input | undefined,
  cutoffPack_V: number,
  efficiency: number,
): Limit[] {
  const byPower = (kind: LimitKind, power_W: number | undefined, from: Provenance): Limit | undefined =>
    power_W === undefined ? undefined : { kind, power_W, value_A: power_W / cutoffPack_V, from }
  const feed_W = input?.feed?.power_W
  const given_W = feed_W && Math.min(feed_W, sourceShare_W)
  return [
    charger && { kind: 'charger' as const, value_A: largestStep_A(charger.currents), from: theCharger },
    byPower('charger power', charger?.power_W, theCharger),
    byPower('source', given_W && given_W * efficiency, given_W === feed_W ? theSource : theShare),
  ].filter(limit => limit !== undefined)
}

/** The smallest pack of this kind that a step suits, in Ah; undefined where a limit that does not grow with the pack is below it. */
export function smallestPack_Ah({ limits }: Bounds, step_A: number): number | undefined {
  const fixed = limits.filter(({ rate_C }) => rate_C === undefined)
  if (fixed.some(({ value_A }) => value_A < step_A)) return undefined
  return step_A / Math.min(...limits.map(({ rate_C }) => rate_C ?? Number.POSITIVE_INFINITY))
}
