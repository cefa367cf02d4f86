// A plain yes or no to a question of ours.

import { opensAsking } from './asks-nothing.ts'

const yes =
  /^(?:y|yes|yep|yeah|yup|ok|okay|sure|do it|do so|go ahead|go on|proceed|please do|confirm(?:ed)?|right|correct|affirmative|agreed|approved|granted|k|go for it|fine|good|lovely|great|perfect|all ?right|1)\b/i
const no =
  /^(?:n|no|nope|nah|leave (?:it|that)|don'?t|do not|never ?mind|stop|cancel|wait|better not|negative|denied|2)\b/i
const yesAtEnd = /\byes(?: please| pls)?\W*$/i
const denies = /\b(?:no|not|never|\w+n'?t|stop|wait)\b/i
const fewWords = 4
/** Nothing is to become of it. */
const stays =
  /\b(?:keep|leave) (?:it|that|them|this)(?= (?:as it (?:is|was)|after all|then|please|there|up|alone|for now)|\W*$)|\b(?:it|that|they) (?:(?:can|may|shall|should|must|will|had|better|just) )*(?:stays?|remains?)\b/i
const mostWords = 9

/** "It can stay": without a number, which would tell what else is to come of it. */
export const leavesIt = (text: string): boolean =>
  stays.test(text) && !opensAsking.test(text) && !/\d/.test(text) && wordsIn(text) <= mostWords

const wordsIn = (text: string): number => text.split(/\s+/).length

/** Undefined where it is neither, or goes on to something else. */
export function yesOrNo(text: string): 'yes' | 'no' | undefined {
  const plain = text.trim().replace(/^[^\p{L}\d]+/u, '')
  if (leavesIt(plain)) return 'no'
  if (wordsIn(plain) > fewWords || /\d.*\d|\d ?[a-z]/i.test(plain)) return undefined
  if (no.test(plain)) return 'no'
  return (yes.test(plain) || yesAtEnd.test(plain)) && !denies.test(plain) ? 'yes' : undefined
}
