// What is said of cutoffs, and of a charger that was checked with a meter.

import type { WordsOf } from '../../src/assistant/command.ts'
import { fullVoltage_V } from '../../src/charging/things/level.ts'
import { faultyFrom_V, trimTolerance_V } from '../../src/charging/upkeep/trim.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { ofChargeWords } from '../shared/charging.words.ts'
import { cite } from '../shared/setting.words.ts'
import type { trim } from './trim.ts'

export const trimWords: WordsOf<typeof trim> = locale => {
  const { say, own } = locale
  return {
    summary: say`The cutoff to set, from those a charger has, or a charger's cutoff against a meter.`,
    asks: [
      own('my charger says 4.20 V and the meter says 4.21 V on a LiPo'),
      own('the charger reads 4.20 V but my meter 4.17 V on a LiPo'),
    ],
    takes: {
      pack: { about: say`the pack it was measured on`, as: text => text },
      chemistry: { about: say`where no pack is named`, as: text => text },
      shown: { about: say`what the charger shows at the end of a charge`, as: text => say`shown ${text}` },
      measured: { about: say`what a trusted meter says then`, as: text => say`measured ${text}` },
      charger: { about: say`with the cutoffs it offers`, as: ofChargeWords(locale).charger.as },
      cutoffs: {
        about: say`those that the charger offers, where nothing else of it matters`,
        as: text => say`from ${text}`,
      },
      to: { about: say`the cutoff wanted; full when not said`, as: text => say`to ${text}` },
    },
    answer: result => {
      switch (result.way) {
        case 'any':
          return [anyWords(result, locale)]
        case 'chosen':
          return chosenWords(result, locale)
        case 'judged':
          return [judgedWords(result, locale)]
      }
    },
    figures: {
      error: say`measured less shown, a cell`,
      measuredPerCell: say`measured, a cell`,
      highestSetting: say`highest setting, a cell`,
      cutoffPerCell: say`cutoff, a cell`,
      cutoffPack: say`cutoff of the pack`,
      soc: (_, { way }) => (way === 'judged' ? say`charge of a cell at the measured volts` : say`charge that results`),
    },
    working: result => [
      ...ownWorking(result, locale),
      houseLine(result, locale),
      result.way === 'judged' ? undefined : chargeLine(result, locale),
    ],
  }
}

type Result = Parameters<ReturnType<typeof trimWords>['answer']>[0]
type ResultOf<W extends Result['way']> = Extract<Result, { readonly way: W }>
const nameOf = ({ permit }: Result, { own }: Locale): Text => own(permit.situation.pack.chemistry.name)

function anyWords(result: ResultOf<'any'>, locale: Locale): Text {
  const { say, show, own } = locale
  const { set_V, most_V, pack_V, permit } = result
  const name = nameOf(result, locale)
  const most = most_V === set_V ? say`never more` : say`never more than ${show.perCell(most_V)}`
  return pack_V === undefined
    ? say`Set ${show.perCell(set_V)} a cell for ${name}, and ${most}.`
    : say`Set ${show.perCell(set_V)} a cell (${show.voltage(pack_V)} for ${own(`${permit.situation.pack.series}S`)}) for ${name}, and ${most}.`
}

function chosenWords(result: ResultOf<'chosen'>, locale: Locale): readonly Text[] {
  const { say, show } = locale
  const { set_V, gets_V, wanted_V, charge } = result
  const wanted = show.perCell(wanted_V)
  return [
    say`Choose ${show.perCell(set_V)} a cell: it fills ${nameOf(result, locale)} cells to about ${show.percent(charge.soc)} (${show.percent(charge.band.low)} to ${show.percent(charge.band.high)}).`,
    Math.abs(gets_V - wanted_V) < 0.005
      ? say`That is the cutoff wanted.`
      : set_V > wanted_V
        ? say`The charger has none at or near ${wanted}; this one is still within full.`
        : say`The charger has no ${wanted} that fits; the next lower leaves the pack less full, which does no harm.`,
  ]
}

function judgedWords({ kind, error_V, set_V }: ResultOf<'judged'>, { say, show }: Locale): Text {
  const off = show.number(Math.abs(error_V), 3)
  switch (kind) {
    case 'within tolerance':
      return say`Leave the charger as it is: ${off} V a cell is inside the tolerance.`
    case 'charges high':
      return say`The cells get ${off} V more than the charger says: set ${show.perCell(set_V)} a cell at most, or correct its calibration by that much.`
    case 'charges low':
      return say`The cells get ${off} V less than the charger says: no harm, the pack is only less full. Correct its calibration if it has one, and do not make up for it with a cutoff above full.`
  }
}

function ownWorking(result: Result, locale: Locale): readonly (Text | undefined)[] {
  const { say, show } = locale
  const { full_V } = result.permit.situation.pack.chemistry
  switch (result.way) {
    case 'any':
      return [say`Full is ${show.perCell(full_V.value)} a cell (${cite(full_V, locale)}).`]
    case 'chosen':
      return [
        say`The charger has ${joined(result.cutoffs_V.map(show.perCell), ', ')}; wanted ${show.perCell(result.wanted_V)}; full is ${show.perCell(full_V.value)} (${cite(full_V, locale)}).`,
        result.error_V > 0
          ? say`The cells get ${show.number(result.error_V, 3)} V more than the charger says.`
          : undefined,
      ]
    case 'judged':
      return [
        say`Error: ${show.number(result.measured_V, 3)} V − ${show.number(result.shown_V, 3)} V = ${show.number(result.error_V, 3)} V per cell.`,
        say`Tolerance ${show.number(trimTolerance_V.value, 2)} V (${cite(trimTolerance_V, locale)}); faulty from ${show.number(faultyFrom_V.value, 1)} V (${cite(faultyFrom_V, locale)}).`,
        say`Highest setting: ${show.perCell(result.limit_V)} less what the cells get too much, rounded down; full is ${show.perCell(full_V.value)} (${cite(full_V, locale)}).`,
      ]
  }
}

/** Said where the club charges these cells less full than they may be. */
function houseLine({ permit }: Result, { say, show, own }: Locale): Text | undefined {
  const { pack, house } = permit.situation
  const most_V = fullVoltage_V(pack.chemistry, house)
  return most_V < pack.chemistry.full_V.value
    ? say`The rules of this club charge ${own(pack.chemistry.name)} to ${show.perCell(most_V)} a cell at most.`
    : undefined
}

function chargeLine({ gets_V, permit }: Result, locale: Locale): Text {
  const { say, show } = locale
  return say`Charge at ${show.perCell(gets_V)} at rest (${cite(permit.situation.pack.chemistry.curve, locale)}); stopped at a tenth of the current it is a little less.`
}
