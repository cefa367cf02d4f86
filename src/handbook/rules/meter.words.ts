// What is said of a charger that was checked with a meter.

import type { meterLimits } from '../../charging/envelope/limits/meter.ts'
import { fullVoltage_V } from '../../charging/things/level.ts'
import { highestSetting_V } from '../../charging/upkeep/trim.ts'
import type { Met, WordsOf } from './lines.ts'

export const meterWords: WordsOf<typeof meterLimits> = ({ say, show }) => {
  const fullOf = ({ found: { known } }: Met) => known.situation.pack?.chemistry.full_V.value ?? 0
  /** What to set so that no cell gets more than the club lets it have. */
  const settable = ({ found: { known } }: Met) => {
    const { pack, house, meter } = known.situation
    const error_V = (meter?.measured_V ?? 0) - (meter?.shown_V ?? 0)
    return show.perCell(pack ? highestSetting_V(fullVoltage_V(pack.chemistry, house), error_V) : 0)
  }
  return {
    gotHazard: met => [
      say`Do not charge at this setting, and do not fly the pack: it was taken to ${met.met} a cell, far above full, ${show.perCell(fullOf(met))}.`,
      say`Outdoors on stone with the pack, away from people; it can catch fire long after it is unplugged.`,
    ],
    gotTooMuch: met => [
      say`Do not charge at this setting: it took the cells to ${met.met}, above full, ${show.perCell(fullOf(met))}.`,
      say`Set ${settable(met)} a cell at most, or correct the calibration of the charger.`,
    ],
    chargerFaulty: ({ met, than }) => [
      say`Do not use this charger: it is ${met} a cell off, and more than ${than} is no matter of trimming.`,
      say`Check the cell count, the balance lead and the meter; if they are right, the charger is faulty.`,
    ],
    gotAboveFull: met => [
      say`${met.met} a cell is a little above full: if you trust the meter, set ${settable(met)} at most.`,
    ],
    chargerOff: ({ met }) => [
      say`The charger is ${met} a cell off: check it against a second meter before you correct it.`,
    ],
    aboveWish: ({ met }) => [
      say`That is ${met} a cell more than you asked for: stop the charge by hand if you want less.`,
    ],
  }
}
