// Whether somebody asks leave to do something, rather than why it is so: then the answer is a verdict.

import { opensAsking } from '../language/conversation/heard/asks-nothing.ts'

const explained =
  /^(?:\W|and |but |so |ok |sir |please |hi |hello |hey )*(?:why|how come|what(?! if)|whats|which|explain|tell me|wieso|warum)(?!\p{L})/iu

const asked = [
  /(?<!\p{L})(?:may|can|could|shall|should|dare|might) (?:i|we|you|one|it|they|he|she|this|that|these|those|a|an|the|my|our|his|her|some\w+|people|members|guests|kids|children|packs?|lipos?|nimhs?|leds?|full|lihv|life|charged|charging|sodium)(?!\p{L})/iu,
  /(?<!\p{L})(?:ok|okay|allowed|permitted|permissible|alright|all right|acceptable|harmless|safe|fine)(?!\p{L})/iu,
  /(?<!\p{L})(?:is|would|was|isnt|isn't) (?:it|that|this) (?:\w+ ){0,2}(?:bad|good|enough|dangerous|possible|a problem|idea)(?!\p{L})/iu,
  /(?<!\p{L})(?:yes or no|just (?:this )?once|good idea|any harm|what if|problem\?|may i|worth it)(?!\p{L})/iu,
  /(?<!\p{L})(?:puedo|se puede|podemos|posso|pode|darf|dürfen|kann (?:ich|man)|est-ce que je peux|je peux|on peut)(?!\p{L})/iu,
]

export const asksLeave = (text: string): boolean => !explained.test(text) && asked.some(one => one.test(text))

const clause = /.+?(?:[,.;:!?]+(?=\s|$)|$)/gsu
const supposed = /^\W*(?:(?:and|but|so|ok) )*(?:what )?if\b/i

/** "The shed is fine": so it is said to be. */
const declared =
  /(?:\b(?:is|are|was|were|been|seems?|looks?)|'s) (?:\w+ )?(?:ok|okay|alright|all right|acceptable|harmless|safe|fine)\b/i

/** Whether leave is asked for what stands at `at`: "I charge on the sofa, is that ok" tells it, and asks about it after. */
export function asksLeaveAt(text: string, at: number): boolean {
  if (!asksLeave(text)) return false
  const own = [...text.matchAll(clause)].find(({ index, 0: { length } }) => at < index + length)?.[0] ?? text
  return opensAsking.test(own) || supposed.test(own) || (asksLeave(own) && !declared.test(own))
}

/** It asks what or why, and for no leave: nothing is about to be done that only sounds like a danger. */
export const asksToKnow = (text: string): boolean => opensAsking.test(text) && !asksLeave(text)
