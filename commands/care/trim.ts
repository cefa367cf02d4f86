// A charger's cutoff checked with a meter, and which cutoff to choose where its list lacks the one wanted.

import { type Asked, command, optional } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { boundsOf } from '../../src/charging/setting/bounds.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import type { Told } from '../../src/charging/situation/situation.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import { fullVoltage_V, goalOf, type Level } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { anyCurrent } from '../../src/charging/things/steps.ts'
import { chargeAtRest } from '../../src/charging/upkeep/rest-charge.ts'
import { chosenCutoff_V, got_V, highestSetting_V, trimOf } from '../../src/charging/upkeep/trim.ts'
import { cutoffsKind } from '../../src/language/kinds/reading-kinds.ts'
import { cellsKind, chargerKind, packKind, stateKind, targetKind } from '../../src/language/kinds/values.ts'
import { packOrCell } from '../shared/charging.ts'
import { bothReadings, voltsWanted } from './problems.words.ts'

const takes = {
  pack: optional(packKind),
  chemistry: optional(cellsKind),
  shown: optional(stateKind),
  measured: optional(stateKind),
  charger: optional(chargerKind),
  cutoffs: optional(cutoffsKind),
  to: optional(targetKind),
}

type TrimAsked = Asked<typeof takes>
const checked = 'trim chemistry: LiPo shown: 4.20V measured: 4.23V'

export const trim = command({
  name: 'trim',
  shelf: 'care trim',
  takes,
  examples: [
    'trim chemistry: LiPo shown: 4.20V measured: 4.21V',
    'trim pack: 3S 720 LiHV shown: 13.05V measured: 12.96V',
    'trim chemistry: 3S LiHV',
    'trim pack: 2S 2600 Li-ion charger: 1/2/3A 4.15/4.20/4.35V to: 4.10V per cell',
  ],
  situation: (asked, { house }) => {
    const pack = packOrCell(asked.pack, asked.chemistry, checked)
    return {
      act: 'charge',
      pack,
      to: asked.to,
      meter: meterOf(asked, pack),
      charger: unfit(asked, pack, house),
      kindOnly: asked.pack === undefined,
    }
  },
  compute: (permit, asked) => {
    const { pack, meter } = permit.situation
    if ((asked.shown === undefined) !== (asked.measured === undefined)) throw bothReadings(checked)
    if (asked.shown && asked.measured && !meter) {
      throw voltsWanted(voltsOf(asked.shown, pack) === undefined ? 'shown' : 'measured')
    }
    const cutoffs_V = cutoffsOf(asked)
    if (cutoffs_V) return chosen(permit, cutoffs_V)
    return meter ? judged(permit, meter) : anyCutoff(permit)
  },
  planned: ({ gets_V }) => ({ cutoff_V: gets_V }),
  figures: result => [...cutoffFigures(result), figure.percent('soc', result.charge.soc, result.charge.band)],
})

const cutoffFigures = (result: Chosen) =>
  result.way === 'judged'
    ? [
        figure.offset('error', result.error_V),
        figure.perCell('measuredPerCell', result.measured_V),
        figure.perCell('highestSetting', result.set_V),
      ]
    : [figure.perCell('cutoffPerCell', result.set_V), figure.voltage('cutoffPack', result.pack_V)]

const cutoffsOf = ({ cutoffs, charger }: TrimAsked): readonly number[] | undefined => cutoffs ?? charger?.cutoffs_V

/** A reading is volts; full stands for the chemistry's full volts. */
function voltsOf(level: Level, { chemistry }: Pack): number | undefined {
  if (level.kind === 'rest') return level.perCell_V
  return level.kind === 'named' && level.name === 'full' ? chemistry.full_V.value : undefined
}

function meterOf({ shown, measured }: TrimAsked, pack: Pack): Told['meter'] {
  const [shown_V, measured_V] = [shown, measured].map(level => level && voltsOf(level, pack))
  return shown_V === undefined || measured_V === undefined ? undefined : { shown_V, measured_V }
}

interface Wish {
  readonly pack: Pack
  readonly to?: Level | undefined
  readonly house: HouseLimits
  readonly meter?: Told['meter']
}

type Chosen = ReturnType<typeof chosen> | ReturnType<typeof judged> | ReturnType<typeof anyCutoff>

function choiceOf({ pack, to, house, meter }: Wish, cutoffs_V: readonly number[]) {
  const goal = goalOf(to ?? { kind: 'named', name: 'full' }, pack.chemistry, house)
  return {
    cutoffs_V,
    wanted_V: goal.kind === 'voltage' ? goal.perCell_V : goal.cutoffPerCell_V,
    full_V: fullVoltage_V(pack.chemistry, house),
    error_V: meter ? trimOf(meter).error_V : 0,
  }
}

/** The charger as far as it matters, which is where none of its cutoffs fits: what the cells get of each. */
function unfit(asked: TrimAsked, pack: Pack, house: HouseLimits): Told['charger'] {
  const cutoffs_V = cutoffsOf(asked)
  if (!cutoffs_V) return undefined
  const choice = choiceOf({ pack, to: asked.to, house, meter: meterOf(asked, pack) }, cutoffs_V)
  if (chosenCutoff_V(choice) !== undefined) return undefined
  return { currents: anyCurrent, cutoffs_V: cutoffs_V.map(set_V => got_V(set_V, choice.error_V)) }
}

function chosen({ situation }: Permit, cutoffs_V: readonly number[]) {
  const choice = choiceOf(situation, cutoffs_V)
  const set_V = chosenCutoff_V(choice)
  if (set_V === undefined) throw new RangeError('a permit for a charger without a fitting cutoff')
  const { series, chemistry } = situation.pack
  const gets_V = got_V(set_V, choice.error_V)
  const charge = chargeAtRest(chemistry, gets_V)
  return { way: 'chosen' as const, ...choice, set_V, gets_V, pack_V: set_V * series, charge }
}

function judged({ situation }: Permit, meter: NonNullable<Told['meter']>) {
  const { chemistry } = situation.pack
  const { error_V, kind } = trimOf(meter)
  const limit_V = fullVoltage_V(chemistry, situation.house)
  const takesTooFar = kind === 'charges high' || meter.measured_V > chemistry.full_V.value
  const set_V = takesTooFar ? highestSetting_V(limit_V, error_V) : limit_V
  const gets_V = takesTooFar ? got_V(set_V, error_V) : limit_V
  const charge = chargeAtRest(chemistry, Math.min(meter.measured_V, chemistry.full_V.value))
  return { way: 'judged' as const, ...meter, error_V, kind, limit_V, set_V, gets_V, charge }
}

function anyCutoff(permit: Permit) {
  const { pack, house } = permit.situation
  const set_V = boundsOf(permit.situation).cutoff.perCell_V
  return {
    way: 'any' as const,
    set_V,
    gets_V: set_V,
    most_V: fullVoltage_V(pack.chemistry, house),
    pack_V: pack.series > 1 ? set_V * pack.series : undefined,
    charge: chargeAtRest(pack.chemistry, set_V),
  }
}
