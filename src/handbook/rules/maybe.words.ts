// What is said of a danger that the words may well tell: the case it would be, and what then.

import type { Maybe } from '../../charging/situation/doubts.ts'
import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'

/** Stand before the answer, which holds where it is not so. */
export function maybeWords({ say }: Locale): Readonly<Record<Maybe, () => readonly [Text]>> {
  return {
    maybeFire: () => [say`If it smokes, hisses or smells: do not stay near it, get away and call the fire service.`],
    maybeInjury: () => [say`If somebody is hurt: do not go on, first aid first, and call for help.`],
    maybeSwollen: () => [say`If it is swollen, even a little: do not charge or fly it.`],
    maybePierced: () => [say`If it is cut, dented or leaking: do not charge it.`],
    maybeWet: () => [say`If it got wet: do not charge it.`],
    maybeHotPack: () => [say`If the pack is hot: do not charge it before it has cooled to the air.`],
    maybeOverfull: () => [
      say`If more went in than it holds, or a cell is above full: do not go on, stop the charge and unplug it.`,
    ],
    maybeCellsHurt: () => [say`If its cells are far apart: do not charge it.`],
    maybeHomework: () => [say`If you mean to open, solder or short a pack: do not.`],
    maybeBypass: () => [say`If a fuse or its protection is bridged: do not charge it that way.`],
    maybeRevive: () => [say`If it was run down below its damage volts: do not try to revive it.`],
    maybeFolkRemedy: () => [say`Never use salt water, a lamp, a freezer or pressing: they make a bad pack worse.`],
    maybeNoCharger: () => [
      say`Without a charger in between, do not: a supply or a panel on the pack does not stop at full.`,
    ],
    maybeWrongCharger: () => [say`If that charger is not made for lithium: do not use it.`],
    maybeWrongMode: () => [say`If the type set on the charger is not the one on the label: do not start.`],
    maybeWrongCount: () => [say`If the cell count set on the charger is not the one of the pack: do not start.`],
    maybeNoBalance: () => [say`Without its balance lead do not charge a pack of several cells.`],
    maybeErrorIgnored: () => [say`If the charger shows an error or ends by its timer: do not override it.`],
    maybeTooFast: () => [say`If the label names no such charge rate: do not charge it that fast; 1C is usual.`],
    maybeKeptApart: () => [say`If one of them is hurt: do not charge or keep it beside the others; outdoors with it.`],
    maybeBoardMixed: () => [say`If they differ in type, cell count, size or volts: do not put them on one board.`],
    maybeReversed: () => [say`If it was connected the wrong way round or sparked: unplug it and do not charge it.`],
    maybeCrossedLeads: () => [say`If main lead and balance lead are not of one pack: do not start.`],
    maybeSeriesCharge: () => [
      say`If packs are still joined in series: do not charge them so, unplug them from each other.`,
    ],
    maybeBadLead: () => [say`If a lead or plug is damaged, bare, coiled or too thin: do not use it.`],
    maybeMainsWet: () => [say`If supply or socket can get wet: do not use the mains there.`],
    maybeUnknownPack: () => [say`If its type is not known for certain: do not charge it.`],
    maybeUnattended: () => [say`If nobody stays beside it, awake: do not charge; a charge is never left alone.`],
    maybeMovingVehicle: () => [say`If the vehicle moves meanwhile: do not charge in it.`],
    maybeSoftBed: () => [say`If it lies on cloth, foam or carpet, or in a bag: do not charge it there.`],
    maybeBurnsNear: () => [say`If fuel, paper, curtains or other things that burn are near: do not charge there.`],
    maybeWayBlocked: () => [say`If it stands in your way out: do not charge it there.`],
    maybeChildren: () => [say`If children or animals are alone with it: do not charge.`],
    maybeMedical: () => [say`If you are drunk, ill or half asleep: do not charge, let somebody else stay with it.`],
    maybeExhaust: () => [
      say`If an engine or generator runs indoors, in a tent or a closed car: never do that, the exhaust kills.`,
    ],
    maybeHotPlace: () => [say`If it lies in the sun, in a hot car or at a heater: do not charge or leave it there.`],
    maybeBadTransport: () => [say`If it is damaged, over size or with bare plugs: do not carry or send it so.`],
    maybePropeller: () => [say`If a propeller is on: do not charge before it or the pack is off the model.`],
    maybeCrashed: () => [
      say`If it crashed or fell: do not charge it before half an hour outdoors and apart; dented or swollen, never.`,
    ],
    maybeTooLow: () => [say`If a cell was run below its lowest volts: do not charge before each is measured at rest.`],
    maybeColdPack: () => [say`If the pack is cold: do not charge it below 0 °C; warm it to room temperature first.`],
    maybeStoredFull: () => [
      say`If it was left full or empty for weeks: do not charge it before every cell is measured.`,
    ],
    maybeDrainsSource: () => [say`If that empties the source too far: do not; an engine must still start.`],
    maybeLeftOnCharger: () => [
      say`If it stays connected after the end: do not leave it so, take it off when it is full.`,
    ],
    maybeSealedBox: () => [say`If the box is shut tight: do not charge in it, gas must get out.`],
    maybeLoose: () => [
      say`If its plugs are bare beside keys, coins or packs: do not carry or charge it so, cover them first.`,
    ],
    maybeDisposal: () => [say`Never into the bin or the fire: lithium goes where batteries are collected.`],
  }
}
