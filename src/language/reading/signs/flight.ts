// Whether a time is one in the air, or one that a charge may take.

import type { Candidate } from '../../candidates/sentence/candidate.ts'
import { past } from '../told/slots.ts'

const drawn =
  /\b(?:draw(?:s|ing)?|drew|pull(?:s|ing)?|averag(?:e|es|ing)|mean|hover(?:s|ing)?|cruis(?:e|es|ing)|in flight|in the air|throttle|burns?|avg)\b/i
const lasts = /\b(?:timer|flight time|time in the air|endurance|how long|how many min\w*)\b/i
/** Nothing else lasts so long: "how many minutes can I fly". */
const flies =
  /\bfl(?:ight|ying) ?(?:times?|timer)\b|\bhow (?:long|many min\w*) (?:(?:can|could|may|will|would|do|does) (?:\w+ ){1,2}|of |in )?(?:fly|flying|flight|hover|stay up|the air)\b/i
const charges = /\b(?:charg\w*|refill\w*|fill\w*|top(?:s|ped)? up)\b/i

/** It is charged first: "how long till I can fly". */
export const waitsToFly = /\bhow long\b.*\b(?:till|til|until|before) (?:\w+ ){0,3}fl(?:y|ies|ying|ight)\b/i

export const asksFlightTime = (text: string, values: readonly Candidate[]): boolean =>
  values.some(({ kind }) => kind === 'current') &&
  !values.some(({ kind }) => kind === 'charger' || kind === 'source') &&
  (flies.test(text) || (drawn.test(text) && lasts.test(text))) &&
  !charges.test(text)

/** "Full in 40 min?": of a charge, where no current is asked for and nothing was used in that time. */
export const isChargedWithin = (text: string, values: readonly Candidate[]): boolean =>
  /\b(?:charg\w*|full|re?fill\w*|ready|done)\b/i.test(text) &&
  !/\b(?:amps?|amperes?|current)\b/i.test(text) &&
  !values.some(({ kind, remains }) => remains || kind === 'capacity') &&
  values.some(({ kind, cue = '', next = '' }) => kind === 'duration' && /^(?:in|within)$/.test(cue) && !past.has(next))

const draws = /\b(?:draws?|drawing|takes|uses|needs|pulls|eats|consumes|sips)\b/i
const runsOn = /\b(?:run|runs|last|lasts|power|feed|keep|carry)\b/i

/** "It draws 0.4 W, how many days would a 4S 5000 run it": the pack runs something. */
export const isRunBy = (text: string, values: readonly Candidate[]): boolean =>
  values.some(({ kind }) => kind === 'power') &&
  draws.test(text) &&
  runsOn.test(text) &&
  /\bhow (?:long|many (?:days|hours|minutes|nights|weeks))\b/i.test(text) &&
  !charges.test(text)

/** "Used 1850 of a 2700 in 5:30, what timer": so much of a flight, and no charge. */
export const asksTimer = (text: string, values: readonly Candidate[]): boolean =>
  /\btimer\b/i.test(text) &&
  values.some(({ kind }) => kind === 'duration' || kind === 'clock') &&
  values.filter(({ kind, pack }) => kind === 'capacity' || pack?.capacity_Ah !== undefined).length > 1

const takesOff =
  /\b(?:pull|unplug|disconnect|interrupt|stop|take)(?:s|ing|ping)?\b(?: (?:it|them|the (?:pack|charge|lot)|charging))?(?: (?:off|out|away))?(?: the charger)? (?:after|at|in)\b/i
const asksShare = /\bhow (?:full|much|far)\b|%|\bper ?cent\b|\b(?:what|which) (?:level|share)\b/i

/** "I pull it after 20 min at 1.3 A, how full is it": a charge that is cut short. */
export const isCutShort = (text: string, values: readonly Candidate[]): boolean =>
  takesOff.test(text) && asksShare.test(text) && values.some(({ kind }) => kind === 'duration')

const leaves = /\b(?:go(?:es)?|leav(?:e|es|ing)|depart(?:s|ing)?|starts?|begins?|be off|off again|due)\b/i

/** "The train goes in half an hour": so long there is to charge. */
export const isLeftBefore = (text: string, values: readonly Candidate[]): boolean =>
  values.some(({ kind, cue, start }) => kind === 'duration' && cue === 'in' && leaves.test(text.slice(0, start))) &&
  !drawn.test(text) &&
  !flies.test(text)
