// What is said where a source, or a battery that is drained or carried aboard, breaks a limit.

import type { Found } from '../../charging/envelope/judge.ts'
import type { sourcesLimits } from '../../charging/envelope/limits/sources.ts'
import { sourceFloor_V } from '../../charging/things/battery-store.ts'
import type { Met, WordsOf } from './lines.ts'

/** Floor under load of the pack that is drained, in V. */
const floor_V = ({ known: { situation } }: Found): number =>
  situation.pack ? sourceFloor_V(situation.pack, situation.house) : 0

export const sourceWords: WordsOf<typeof sourcesLimits> = ({ say, show }) => {
  const window = ({ found: { known } }: Met) => {
    const { charger } = known.situation
    const gives_V = known.bounds?.input?.gives_V ?? [0, 0]
    const span = ([low_V, high_V]: readonly [number, number]) =>
      Number.isFinite(high_V)
        ? low_V === high_V
          ? show.voltage(low_V)
          : say`${show.voltage(low_V)} to ${show.voltage(high_V)}`
        : say`${show.voltage(low_V)} and up`
    return {
      gives: span(gives_V),
      wants: span([charger?.minInput_V ?? 0, charger?.maxInput_V ?? Number.POSITIVE_INFINITY]),
    }
  }
  return {
    inputOutside: met => [
      say`This source cannot feed this charger: it gives ${window(met).gives}, and the charger wants ${window(met).wants}.`,
      say`Use a source inside that range, or a charger that works from this one.`,
    ],
    sourceAtFloor: ({ found: { known } }) => [
      say`Do not use this source: at ${show.voltage(known.bounds?.input?.gives_V[0] ?? 0)} it is at its floor of ${show.voltage(known.bounds?.input?.floor_V ?? 0)} already.`,
      say`Charge it first, or use another source.`,
    ],
    sourceRunsOut: () => [
      say`Do not charge from this source: it does not carry one whole charge above its floor.`,
      say`Use a larger or a fuller source.`,
    ],
    drainedAlready: () => [
      say`Do not take any more from it: the pack is at its floor already.`,
      say`Charge it first, or use another pack.`,
    ],
    drainedTooFast: ({ met, than, found }) => [
      found.known.situation.pack?.dischargeRate_C === undefined
        ? say`Do not take ${met} from it: ${than} is the most without a discharge rate on its label.`
        : say`Do not take ${met} from it: ${than} is the most for long, whatever it gives for seconds.`,
      say`Take ${show.power(floor_V(found) * (found.than ?? 0))} out of it at most, or use a larger pack.`,
    ],
    sagsTooFar: ({ met, than }) => [
      say`Do not discharge it that fast: its cells would sink to ${met} under the load, and ${than} is the least.`,
      say`Take half the current, with the cells at room temperature.`,
    ],
    sinksAtOnce: ({ found }) => [
      say`Do not put this load on it: it sinks to its floor of ${show.voltage(floor_V(found))} at once.`,
      say`Take less power, or use a fuller or a larger pack.`,
    ],
    notAllCarried: ({ found: { known } }) => [
      say`No: the source carries ${show.number(known.facts.carried ?? 0, 0)} of the ${show.number(known.facts.wanted ?? 0, 0)}.`,
    ],
    aboveSource: ({ than }) => [
      say`The source cannot carry all of it: hold the charger to ${than}.`,
      say`At more the source may switch off.`,
    ],
    thickInput: () => [
      say`The charger draws much from its source: feel those leads too, and keep them short and thick.`,
    ],
    notInTheAir: ({ met, than }) => [
      say`${met} does not fly with a passenger: ${than} is the most.`,
      say`Leave it at home, or send it as declared cargo by somebody who is trained for that.`,
    ],
    leaveForTwo: ({ met, than }) => [
      say`You have ${met} packs that need its leave, and ${than} may go: leave the others at home.`,
    ],
    airApproval: ({ met, than }) => [
      say`${met} is above ${than}: it needs the leave of the airline, and two such packs are the most.`,
    ],
  }
}
