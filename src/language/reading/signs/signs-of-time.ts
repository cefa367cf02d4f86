// What a time in a sentence says of which command is meant: it may be one in the air, or one that a charge may take.

import { namesLoad } from '../../parts/loads.ts'
import { asksFlightTime, asksTimer, isChargedWithin, isCutShort, isLeftBefore, isRunBy, waitsToFly } from './flight.ts'
import { isOfOne, type Sign, takes } from './sign.ts'

export const signsOfTime: readonly Sign[] = [
  // "Can it be full in 45 min": whether that is time enough.
  {
    meant: command => takes(command, 'pack', 'within'),
    from: command => isOfOne(command) || takes(command, 'energy', 'duration') || takes(command, 'pack', 'device'),
    holds: ({ text, values, pack }) => pack?.series !== undefined && isChargedWithin(text, values),
  },
  // "I pull it after 20 min at 1.3 A, how full is it": how far it has come by then.
  {
    meant: command => takes(command, 'pack', 'within'),
    from: command => takes(command, 'pack'),
    holds: ({ text, values }) => isCutShort(text, values),
  },
  // "The train goes in half an hour, what amps": what there is time for.
  {
    meant: command => takes(command, 'pack', 'within'),
    from: command => isOfOne(command) || takes(command, 'energy', 'duration'),
    holds: ({ text, values, pack }) => pack !== undefined && isLeftBefore(text, values),
  },
  // "Draws 45 A on average, what timer": it is flown, and not charged at that.
  {
    meant: command => takes(command, 'energy', 'duration'),
    from: command => takes(command, 'pack'),
    holds: ({ text, values, pack }) => pack !== undefined && asksFlightTime(text, values),
  },
  // "A 12 V strip that draws 1.2 A, how long": the pack runs it.
  {
    meant: command => takes(command, 'pack', 'device'),
    from: command => isOfOne(command) || takes(command, 'energy', 'duration'),
    holds: ({ text, values, pack }) =>
      pack !== undefined &&
      ((namesLoad(text) && values.some(({ kind }) => kind === 'current' || kind === 'power')) || isRunBy(text, values)),
    isNoWords: true,
  },
  // "Used 1850 of a 2700 in 5:30, what do I set the timer to": how long it may be flown.
  {
    meant: command => takes(command, 'energy', 'duration'),
    from: command => takes(command, 'pack'),
    holds: ({ text, values }) => asksTimer(text, values),
    isNoWords: true,
  },
  // "At 3 A, how long till I can fly": it is charged, and not flown at that.
  {
    meant: command => takes(command, 'pack', 'within'),
    from: command => takes(command, 'energy', 'duration'),
    holds: ({ text }) => waitsToFly.test(text),
  },
]
