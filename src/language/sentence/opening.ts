// Words that only open a message, and say nothing of what it asks: "hey", "right then,", "um", "so".

const after = String.raw`(?:\s*[,.:;!…-]+\s*|\s+|$)`
const all = String.raw`(?:\s+(?:all|there|folks|guys|every(?:one|body)|team|mates?|gang|lads|people|friends|again))*`
const greets = `(?:h[ei]y+a?|hi+ya?|hello+|howdy|yo|moin|g'?day|(?:good )?(?:morning|evening|afternoon))${all}`
const fills = String.raw`(?:right(?:\s+then|\s+so|(?=\s*,))|u+m+|u+h+m*|e+r+m*|well(?=[\s,])|listen|look(?=\s*,)|anyway|btw|by the way|quick (?:one|question))`
/** These tell that it goes on from what was said. */
const joins = '(?:so|ok(?:ay)?|and|then|now|but|oh|ah|h+m+|alright|right)'
const opening = (...of: readonly string[]) => new RegExp(String.raw`^\s*(?:(?:${of.join('|')})${after})+`, 'iu')
/** "Thank you. And per cell?": with more behind it. */
const thanks =
  /^\s*(?:(?:many )?thanks|thank you|thx|cheers|ta|great|perfect|lovely|good|nice|cool|brilliant|got it|i see)(?:\s+(?:so much|very much|a lot|for that|mate|then))*\s*(?:[.!;]+|,(?=\s*(?:and|so|now|then|but|what|how|which)\b))\s*(?=\S+\s+\S)/iu
const [idle, any] = [opening(greets, fills), opening(greets, fills, joins)]
const word = /\p{L}+/gu
/** Said to whoever answers: the greeting is part of it. */
const toOne = /\b(?:you|u|my name|meet|any ?(?:one|body))\b/i

const lengthOf = (opens: RegExp, text: string, least: number): number => {
  const { length } = opens.exec(text)?.[0] ?? ''
  return (text.slice(length).match(word) ?? []).length < least ? 0 : length
}

/** It asks or tells something of its own; a greeting with news behind it stays one. */
const asks =
  /\d|\?|^(?:wh\w+|how|is|are|can|may|do|does|did|will|should|could|would|show|list|save|pin|remind|log|i|my|our)\b/i
const few = 3

/** How many characters are idle; none where they are nearly all that is said. */
export function idleOpening(text: string): number {
  const thanked = thanks.exec(text)?.[0].length ?? 0
  return thanked + idleAt(text.slice(thanked))
}

function idleAt(text: string): number {
  const length = toOne.test(text) ? 0 : lengthOf(idle, text, 2)
  const rest = text.slice(length)
  return asks.test(rest) || (rest.match(word) ?? []).length <= few ? length : 0
}

/** Without what opens it, be it idle or joining. */
export const withoutOpening = (text: string): string => text.slice(lengthOf(any, text, 1))
