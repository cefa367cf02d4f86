// What values and structure say of each danger, whatever the words sound like: that it is none, of another thing, or open.

import type { Danger } from '../../../charging/situation/dangers.ts'
import { isKept, isMinded, isOfKnowing, isStaying } from './attended.ts'
import { isBurnAsked, isFireAsked, isFireFought, isPartBurnt } from './burning.ts'
import { isJustFull } from './cutoff.ts'
import { asksBeforehand, asksHowLong } from './general.ts'
import { isOfHolder, isOfLabel } from './holders.ts'
import { isLabelled, isRoundCell, isTimeUnknown, isUsedUp } from './label.ts'
import { isOneCount, isOneKind } from './one-kind.ts'
import type { Told } from './relation.ts'
import { isAmongChildren, isChildAsking, isDoneByChild, isPlaceOfCharger, isWhereOneSleeps } from './rooms.ts'
import { isSameCount, isSameType } from './setting.ts'
import { isInFlight, isJourney, isRatedFuse, isUsualRate, isWithinLabel, mayBeHigh, tookMore } from './speed.ts'
import {
  chargedInWet,
  isBesideFuel,
  isBesidePacks,
  isCarried,
  isHotCharger,
  isInRain,
  isOfDevice,
  isOneSource,
  isPlugSpark,
  isTripOver,
  isWarmPack,
  wetDevice,
} from './spoken-of.ts'
import { healthyVolts, isAlike } from './volts.ts'
import { isAirWarm, isMild, isWarm } from './warmth.ts'
import { isLoad } from './without-charger.ts'

/** Dangers that the values told show not to be there, whatever the words sound like. */
export const disproved: Partial<Record<Danger, (told: Told) => boolean>> = {
  swollen: isRoundCell,
  unattended: told => isStaying(told) || isKept(told),
  wrongCount: isSameCount,
  wrongMode: isSameType,
  tooLow: healthyVolts,
  overfull: told => isWithinLabel(told) || isJustFull(told),
  tooFast: told => isUsualRate(told) || isInFlight(told) || isJourney(told) || isAirWarm(told),
  bypass: isRatedFuse,
  boardMixed: told => isAlike(told) || isOneKind(told),
  hotPack: isMild,
  coldPack: isWarm,
  unknownPack: told => isLabelled(told) || isTimeUnknown(told),
  badLead: isInFlight,
  seriesCharge: isInFlight,
}

/** Words for a danger that are said of something else, and are no clue of it. */
export const ofOthers: Partial<Record<Danger, (told: Told) => boolean>> = {
  storedFull: told => asksHowLong(told) || asksBeforehand(told),
  unattended: told => isPlaceOfCharger(told) || isOfKnowing(told) || (asksBeforehand(told) && !told.has('charging')),
  injury: isBurnAsked,
  unknownPack: isUsedUp,
  noCharger: isLoad,
  badLead: isHotCharger,
  revive: ({ has }) => has('swapPolarity'),
  wet: told => [wetDevice, chargedInWet].some(relation => relation(told)) || isOfHolder(told),
  pierced: told => isOfHolder(told) || isOfLabel(told),
  crashed: isOfHolder,
  seriesCharge: isOneSource,
  movingVehicle: told =>
    isTripOver(told) || isCarried(told) || isJourney(told) || (isBesideFuel(told) && !told.has('driving')),
  exhaust: isCarried,
}
/** What is only suspected then: a charger grows hot on a pack that does. */
export const besideOthers: Partial<Record<Danger, (told: Told) => boolean>> = {
  hotPack: isOfDevice,
  unattended: isMinded,
  boardMixed: isOneCount,
  fire: told => isFireAsked(told) || isPartBurnt(told),
  reversed: isPlugSpark,
}
/** What is open, whatever else is told. */
const open: Partial<Record<Danger, (told: Told) => boolean>> = {
  fire: isFireFought,
  unattended: isWhereOneSleeps,
  overfull: told => tookMore(told) || mayBeHigh(told),
  hotPack: isWarmPack,
  mainsWet: isInRain,
  burnsNear: told => isBesideFuel(told) || isBesidePacks(told),
  children: told => isAmongChildren(told) || isChildAsking(told) || isDoneByChild(told),
}
export const alsoSuspected = (told: Told): readonly Danger[] =>
  (Object.keys(open) as Danger[]).filter(danger => open[danger]?.(told))
