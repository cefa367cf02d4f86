// Behind a reminder: another time for it ("better half past nine"), one more, or what the clock shows, where that was asked.

import type { Candidate } from '../../candidates/sentence/candidate.ts'
import { conceptsIn } from '../../model/concepts.ts'
import { fitTo, type Kept } from '../../reading/fit.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'
import { followsSurely, goesOn, isFewWords, isOnlyValues } from '../behind/follow-up.ts'

const adds = /^\W*(?:and|plus|add|also|another)\b/i
/** In place of what was just set, though it is asked as at first: "no, remind me at 14:10". */
const takesBack =
  /^\W*(?:no+|nope|nah|sorry|actually|wait|better|rather|earlier|later|i mean|i meant|(?:make|change|move|shift) (?:it|that))\b|\binstead\b/i
/** "I would like it at 15:10"; but not "second set comes off at 14:00". */
const ofIt = /\b(?:it|that|prefer)\b/i

const isTime = ({ kind, text }: Candidate): boolean => kind === 'duration' || (kind === 'clock' && /\d:\d/.test(text))

export const remindsAnew: Way = (said, command) => {
  const { text, values, frame } = said
  const { options } = frame.question
  const [first, ...others] = values.filter(isTime)
  if (command.name !== 'remind me' || !first || others.length + 1 < values.length) return undefined
  const asksAgain = conceptsIn(text).includes('remind')
  const isAnswer = first.kind === 'clock' && others.length === 0 && first.cue !== 'at'
  if (frame.pending && isAnswer && !asksAgain && !takesBack.test(text))
    return choiceOf(fitTo(command, [], { ...options, now: first.text }), options)
  const isOther = takesBack.test(text) || (!asksAgain && (ofIt.test(text) || isOnlyValues(text, values)))
  const isMore = frame.pending !== undefined || adds.test(text) || !isOther
  const kept: Kept = { ...(options.place && { place: options.place }), ...(!isMore && { instead: 'last' }) }
  // What a clock showed then it shows no longer: by which one it was set the reminder knows.
  const fitted = fitTo(command, values, kept)
  if (fitted.options.in === undefined && fitted.options.at === undefined) return undefined
  const isSure = frame.pending || asksAgain || ((goesOn.test(text) || takesBack.test(text)) && isFewWords(text))
  return { ...choiceOf(fitted, {}), score: isSure ? 1 : followsSurely(said, fitted) }
}
