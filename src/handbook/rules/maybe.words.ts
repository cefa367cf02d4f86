// What is said of a danger that the words may well tell: the case it would be, and what then.

import type { Maybe } from '../../charging/situation/doubts.ts'
import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'

/** Stand before the answer, which holds where it is not so. */
export function maybeWords({ say }: Locale): Readonly<Record<Maybe, () => readonly [Text]>> {
  return {
    maybeFire: () => [say`If it smokes, hisses or smells: get away from it and call the fire service.`],
    maybeInjury: () => [say`If somebody is hurt: first aid first, and call for help.`],
    maybeSwollen: () => [say`If it is swollen, even a little: do not charge or fly it.`],
    maybePierced: () => [say`If it is cut, dented or leaking: do not charge it.`],
    maybeWet: () => [say`If it got wet: do not charge it.`],
    maybeHotPack: () => [say`If the pack is hot: do not charge it before it has cooled to the air.`],
    maybeOverfull: () => [say`If more went in than it holds, or a cell is above full: stop the charge and unplug it.`],
    maybeHomework: () => [say`If you mean to open, solder or short a pack: do not.`],
    maybeBypass: () => [say`If a fuse or its protection is bridged: do not charge it that way.`],
    maybeRevive: () => [say`If it was run down below its damage volts: do not try to revive it.`],
    maybeFolkRemedy: () => [say`No salt water, lamp, freezer or pressing: they make a bad pack worse.`],
    maybeNoCharger: () => [
      say`Without a charger in between, do not: a supply or a panel on the pack does not stop at full.`,
    ],
    maybeWrongCharger: () => [say`If that charger is not made for lithium: do not use it.`],
    maybeWrongMode: () => [say`If the type set on the charger is not the one on the label: do not start.`],
    maybeWrongCount: () => [say`If the cell count set on the charger is not the one of the pack: do not start.`],
    maybeNoBalance: () => [say`Without its balance lead do not charge a pack of several cells.`],
    maybeErrorIgnored: () => [say`If the charger shows an error or ends by its timer: do not override it.`],
    maybeTooFast: () => [say`If the label names no such charge rate: do not charge it that fast; 1C is usual.`],
    maybeKeptApart: () => [say`If one of them is hurt: it stays apart from the others, outdoors.`],
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
    maybeMedical: () => [say`Whoever is drunk, ill or half asleep does not charge: let somebody else stay with it.`],
    maybeExhaust: () => [
      say`If an engine or generator runs indoors, in a tent or a closed car: stop it, the exhaust kills.`,
    ],
    maybeHotPlace: () => [say`If it lies in the sun, in a hot car or at a heater: do not charge or leave it there.`],
    maybeBadTransport: () => [say`If it is damaged, over size or with bare plugs: do not carry or send it so.`],
    maybePropeller: () => [say`If a propeller is on: take it or the pack off before anything is plugged in.`],
    maybeCrashed: () => [
      say`If it crashed or fell: outdoors and apart for half an hour first; dented or swollen, do not charge it.`,
    ],
    maybeTooLow: () => [say`If a cell was run below its lowest volts: measure each at rest before you charge it.`],
    maybeColdPack: () => [say`If the pack is cold: warm it to room temperature first; below 0 °C do not charge.`],
    maybeStoredFull: () => [say`If it was left full or empty for weeks: measure every cell before you charge it.`],
    maybeDrainsSource: () => [say`If that empties the source too far: stop before; an engine must still start.`],
    maybeLeftOnCharger: () => [say`If it stays connected after the end: take it off when it is full.`],
    maybeSealedBox: () => [say`If the box is shut tight: do not charge in it, gas must get out.`],
    maybeLoose: () => [say`If its plugs are bare beside keys, coins or packs: cover them first.`],
    maybeDisposal: () => [say`Not into the bin or the fire: lithium goes where batteries are collected.`],
  }
}
