// What is said where a number breaks a limit.

import type { Found } from '../../charging/envelope/judge.ts'
import type { limits } from '../../charging/envelope/limits/index.ts'
import { isUneven } from '../../charging/setting/balancing.ts'
import { smallestPack_Ah } from '../../charging/setting/bounds.ts'
import { joined } from '../../ground/text.ts'
import { ageWords } from './age.words.ts'
import { boardWords } from './boards.words.ts'
import { cellsWords } from './cells.words.ts'
import { limitHolders } from './holders.words.ts'
import type { WordsOf } from './lines.ts'
import { logWords } from './log.words.ts'
import { meterWords } from './meter.words.ts'
import { sourceWords } from './sources.words.ts'

const drains = ({ known }: Found): boolean => known.situation.act === 'drain'

export const limitWords: WordsOf<typeof limits> = locale => {
  const { say, show } = locale
  const holds = limitHolders(locale)
  return {
    ...sourceWords(locale),
    ...boardWords(locale),
    ...cellsWords(locale),
    ...ageWords(locale),
    ...logWords(locale),
    ...meterWords(locale),
    tooCold: ({ met, than }) => [
      say`Do not charge at ${met}: below ${than} a charge hurts the cells, and it does not show.`,
      say`Warm the pack to room temperature first, slowly and without a heater on it.`,
    ],
    colderThanClub: ({ met, than }) => [
      say`Do not charge at ${met}: this club charges no cells colder than ${than}.`,
      say`Warm the pack to room temperature first, slowly and without a heater on it.`,
    ],
    tooHot: ({ met, than }) => [
      say`Do not charge at ${met}: ${than} is the most for these cells.`,
      say`Let it cool in the shade until it is no warmer than the air, then ask again. If it grew hot by itself, keep away from it.`,
    ],
    tooColdToDrain: ({ met, than }) => [
      say`Do not discharge at ${met}: ${than} is the least for these cells.`,
      say`Warm the pack to room temperature first.`,
    ],
    tooHotToDrain: ({ met, than }) => [
      say`Do not discharge at ${met}: ${than} is the most for these cells.`,
      say`Let it cool in the shade first. If it grew hot by itself, keep away from it.`,
    ],
    tooColdToStore: ({ met, than }) => [
      say`Do not store it at ${met}: ${than} is the least for these cells.`,
      say`A cool, dry room is best.`,
    ],
    tooHotToStore: ({ met, than }) => [
      say`Do not store it at ${met}: above ${than} packs swell and can burn.`,
      say`Take it to a cool, dry place, out of the sun and out of the car.`,
    ],
    tooColdToUse: ({ met, than }) => [
      say`Leave it alone at ${met}: ${than} is the least for these cells.`,
      say`Let it come to room temperature first, slowly and without a heater on it.`,
    ],
    tooHotToUse: ({ met, than }) => [
      say`Leave it alone at ${met}: above ${than} a pack can burst into flames.`,
      say`Keep everybody away until it is as cool as the air. If it goes on getting hotter, call the fire service; do not use it again.`,
    ],
    cutoffAboveFull: ({ met, than }) => [
      say`Do not charge to ${met} a cell: these cells are full at ${than}.`,
      say`Set ${than} a cell at most.`,
    ],
    cutoffTooLow: ({ met, than }) => [
      say`${met} a cell is no place to end a charge: below ${than} these cells count as flown out.`,
      say`Name volts a cell above ${than}, a percentage, storage or full.`,
    ],
    noFittingCutoff: ({ found: { known } }) => [
      say`Do not charge on this charger: none of its cutoffs (${joined((known.situation.charger?.cutoffs_V ?? []).map(show.perCell), ', ')}) fits ${show.perCell(known.bounds?.cutoff.asked_V ?? 0)} a cell.`,
      say`Use a charger that has a setting for this type.`,
    ],
    currentTooHigh: ({ met, than, found: { known } }) => {
      const limit = known.bounds?.askable
      const advised_A = Math.min(known.bounds?.wanted_A ?? 0, known.bounds?.limits[0].value_A ?? 0)
      return [
        say`Do not charge at ${met}: ${than} is all that ${holds[limit?.kind ?? 'chemistry']}.`,
        limit?.kind === 'chemistry'
          ? say`Set ${show.current(advised_A)} instead, unless the label of the maker names a higher charge rate.`
          : say`Set ${show.current(advised_A)} instead.`,
      ]
    },
    stepTooLarge: ({ met, than, found: { known } }) => {
      const limit = known.bounds?.limits[0]
      const from_Ah = known.bounds && smallestPack_Ah(known.bounds, known.facts.smallestStep_A ?? 0)
      return [
        say`Do not charge it on this charger: its smallest step, ${met}, is more than the ${than} that ${holds[limit?.kind ?? 'chemistry']}.`,
        from_Ah === undefined
          ? say`Use a stronger source, or a charger with a smaller step.`
          : say`This charger suits packs of this kind from ${show.capacity(Math.ceil(from_Ah * 1000 - 1e-6) / 1000)} up; use one with a smaller step.`,
      ]
    },
    tooFewCells: ({ met, than }) => [
      say`Do not charge ${met}S on this charger: it starts at ${than}S.`,
      say`Use a charger for this cell count.`,
    ],
    tooManyCells: ({ met, than }) => [
      say`Do not charge ${met}S on this charger: it ends at ${than}S.`,
      say`Use a charger for this cell count.`,
    ],
    noLeadToSee: () => [
      say`This charger starts only when it sees a balance lead, and this pack has none to show.`,
      say`Use a charger made for one cell, or a pack that brings a balance plug.`,
    ],
    nothingToCharge: ({ found: { known } }) =>
      known.situation.act === 'board'
        ? [
            say`There is nothing to charge: every pack is at or above full already.`,
            say`Leave them off the board; to bring them lower, fly or discharge them.`,
          ]
        : [
            say`There is nothing to charge: the pack is at or above its goal already.`,
            say`To bring it lower, fly it or discharge it.`,
          ],
    veryLong: ({ met, than, found }) => [
      say`This takes up to ${met}, and nobody stays with it for more than ${than}: do not start it like this.`,
      drains(found)
        ? say`Take a part of it, and unplug the pack when you go.`
        : say`Use more current within the limits, a stronger source or smaller packs, or charge in parts and unplug between them.`,
    ],
    long: ({ met, than, found }) => [
      say`This takes up to ${met}; somebody has to stay with it all that time, and more than ${than} is long.`,
      drains(found)
        ? say`Take a part of it, and unplug the pack when you go.`
        : say`More current within the limits makes it shorter, and so does charging a part today.`,
    ],
    rateQuestioned: ({ met }) => [
      say`${met} is not a charge rate: the large C number on a pack is for flying. It was not counted.`,
    ],
    veryCold: ({ met }) => [
      say`At ${met} only a fifth of the capacity an hour is right: warm the cells indoors first.`,
    ],
    cold: ({ met }) => [
      say`At ${met} half of the capacity an hour is the most: cold cells are hurt by more, and it does not show.`,
    ],
    warm: ({ met }) => [say`${met} is warm: let the pack cool in the shade before it goes on the charger.`],
    warmsUp: ({ met }) => [
      say`By the end its cells are at about ${met}: less current keeps them cooler. Too hot to hold means stop.`,
    ],
    warmStore: ({ met }) => [say`${met} is warm for storing: packs keep best in a cool room.`],
    aboveUsual: ({ found: { known } }) => [
      isUneven(known.facts.spread_V)
        ? say`That is ${show.rate(known.facts.rate_C ?? 0)}: cells so far apart go with ${show.rate(known.bounds?.wantedRate_C ?? 0)} at most.`
        : say`That is ${show.rate(known.facts.rate_C ?? 0)}, more than the usual ${show.rate(known.bounds?.wantedRate_C ?? 0)}: only for packs whose label allows it.`,
    ],
    tooSlow: ({ met }) => [
      say`${met} is so slow that the charger may never see the end: use a charger with more current.`,
    ],
    notAllReady: () => [
      say`Some packs are left out for lack of time, energy or power: do not make up for it with more current, or below the floor of the source.`,
    ],
    severalAtOnce: ({ met }) => [
      say`${met} packs charge at once: lay them apart on a surface that cannot burn, in the shade, and stay where you see every one of them.`,
    ],
    cool: () => [say`Bring a cool pack indoors until the cells are warm: they take a charge better.`],
    dischargeRate: ({ met }) => [say`The ${met} on its label is what it can give in flight, not a charge rate.`],
    thickLeads: () => [
      say`At this current feel plugs and leads after some minutes: too warm to hold means stop, and use larger ones.`,
    ],
  }
}
