// What is said where packs must not share a board, or only with care.

import type { boardsLimits } from '../../charging/envelope/limits/boards.ts'
import { writePack } from '../../language/things/pack.ts'
import type { Met, WordsOf } from './lines.ts'

export const boardWords: WordsOf<typeof boardsLimits> = locale => {
  const { say, show, own } = locale
  /** Hundredths hide what decides on a board. */
  const fine_V = (value_V = 0) => say`${show.number(value_V, 3)} V`
  const onBoard = ({ found: { known } }: Met) => (known.situation.board ?? []).map(({ pack }) => pack)
  const eachOnce = (names: readonly string[]) =>
    [...new Set(names)].map(own).reduce((all, one) => say`${all} and ${one}`)
  const hurt = ({ found: { known } }: Met) =>
    (known.situation.board ?? [])
      .flatMap(({ pack, dangers = [] }, index) =>
        dangers.length > 0 ? [say`${own(writePack(pack))} (pack ${show.number(index + 1, 0)})`] : [],
      )
      .reduce((all, one) => say`${all} and ${one}`)
  return {
    slowStartOnBoard: ({ met, than }) => [
      say`Do not connect them: a cell at ${met} is below ${than} and must start slowly, which no board does.`,
      say`Charge that pack alone, with a tenth of the current until every cell is above ${than}.`,
    ],
    boardOfOne: () => [
      say`That is one pack: charge it alone, without a board.`,
      say`A board is for two or more packs of one kind and one state.`,
    ],
    boardHurt: met => [
      say`Do not connect them: ${hurt(met)} must not share a board.`,
      say`Set aside what may be hurt, and ask again for the others.`,
    ],
    boardUnknown: () => [
      say`Measure every pack at rest first: 0.1 V a cell apart, they drive a great current into each other.`,
      say`Same type and cell count, none puffed or hurt. Tell me the volts of each for more.`,
    ],
    boardSeries: met => [
      say`Do not connect them: packs of ${eachOnce(onBoard(met).map(({ series }) => `${series}S`))} on one board drive a great current into each other, and may burn.`,
      say`Charge each cell count by itself.`,
    ],
    boardChemistries: met => [
      say`Do not connect them: ${eachOnce(onBoard(met).map(({ chemistry }) => chemistry.name))} are full at different volts.`,
      say`Charge each type by itself.`,
    ],
    boardApart: ({ found, than }) => [
      say`Do not connect them yet: they are ${fine_V(found.met)} a cell apart, and ${than} is the most.`,
      say`Charge the lower one alone until they are within ${than} a cell, then ask again; or charge them one by one.`,
    ],
    boardFlow: ({ met, found: { met: share = 1, known } }) => [
      say`Do not connect them yet: they are ${fine_V(known.facts.apart_V)} a cell apart, and ${met} of what one of them may take or give would flow at first.`,
      // The flow goes with the volts; a millivolt is what a meter can tell.
      say`Charge the lower one alone until they are within ${fine_V(Math.floor(((known.facts.apart_V ?? 0) / share) * 1000) / 1000)} a cell, or charge them one by one.`,
    ],
    boardCharge: ({ met }) => [
      say`Their charge is ${met} apart, and volts do not show it: charge them one by one, or the emptier one first.`,
    ],
  }
}
