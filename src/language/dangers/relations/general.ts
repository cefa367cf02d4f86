// Whether a message asks about a danger in general: its cause, its signs, what keeps it away.

import { type Told, textOf } from './relation.ts'
import type { Value } from './values.ts'

/**
 * "How do I keep packs from swelling", "why must one not charge in bed": such a question tells no danger. Not where
 * something of somebody's own is spoken of or more is said, nor where the reason is asked for what somebody means to do.
 */
export function asksInGeneral({ marked: { words, denies }, values, has, is }: Told): boolean {
  // "I have to" is nothing that somebody has.
  const isBound = (at: number) => words[at + 1]?.w === 'have' && words[at + 2]?.w === 'to'
  const isOwn = words.some((_, at) => is(at, 'ownThing') && !isBound(at))
  if (words.slice(1).some(({ cut }) => cut > 0) || isOwn) return false
  const text = textOf(words)
  // What one is bound to do is no wish; but "why must I not leave it" may be one.
  const isDuty = duty.test(text) && !denies.includes(true)
  const isReason = has('asksReason') && (isDuty || !has('doer'))
  const isOfLimits = isReason && !words.some(({ w }) => pointing.test(w))
  const isPlain = ({ kind, value }: Value) =>
    kind === 'chemistry' || kind === 'count' || (isOfLimits && value >= limits_V.least && value <= limits_V.most)
  if (!values.every(isPlain)) return false
  const isOfThing = ofThing.test(text) && !has('doer') && !denies.slice(0, -1).includes(true)
  return has('asksAbout') || isReason || (isOfThing && !conditional.test(text))
}
/** Volts where cells are full: "why is 4.20 the limit and not 4.25". */
const limits_V = { least: 4.1, most: 4.4 }
const pointing = /^(?:it|its|this|that|these|they|one|reads?|says?|shows?|now)$/
const duty =
  /^(?:(?:and|but|so) )?why (?:(?:do|must|should) (?:i|we|you|people) (?:always |really |even )?(?:need|have|use|balance|connect|plug)|(?:must|should) (?:i|we|you) (?:always )?(?:stay|watch|be))\b(?!.*\b(?:if|when|while|though|although|it|its)\b)/
/** "What does the balance lead do", "what is a fireproof bag for", "what does a puffed pack look like". */
const ofThing =
  /^(?:(?:and|but|so|ok) )?what (?:(?:does|do) (?:an? |the )?.*\b(?:do|look like|feel like|mean)\b|(?:is|are) (?:an? |the )?.*\b(?:for|about)$)/
const conditional = /\b(?:if|when|while|until|it|its|they|them)\b/

/** Nobody wants to do what they ask how never to do; who wants something without a lead, or without staying, does. */
const toPrevent =
  /\b(?:make sure|be sure|ensure|see to it|remember)(?: that)? (?:i|we|nobody|no one|noone|they|members?|the kids|people|my \w+) (?:do not|dont|never|cant|cannot|wont|ever|always)\b|\bwithout (?:\w+ (?:or|and) )?(?:bridging|defeating|bypassing|damaging|hurting|harming|killing|ruining|overcharging|overheating|burning|puffing|swelling|shorting|breaking|opening|cutting)\b/
const asksHow =
  /^(?:(?:and|but|so|ok) )?(?:how (?:do|can|could|should|would|to)|what (?:do|can|should) (?:i|we)|is there a way)\b/

/** "How do I make sure that I never set NiMH", "how can I check it without bridging it": where what is to be prevented begins. */
export function preventedFrom({ marked: { words } }: Told): number | undefined {
  const text = textOf(words)
  const found = asksHow.test(text) && !words.slice(1).some(({ cut }) => cut > 1) ? toPrevent.exec(text) : null
  return found ? textOf(words).slice(0, found.index).split(' ').length - 1 : undefined
}

/** "How long can a pack stay full": asked before it is done, and nothing that was. */
export const asksHowLong = ({ marked: { words }, has }: Told): boolean =>
  howLong.test(textOf(words)) && !has('longAgo') && !words.slice(1).some(({ cut }) => cut > 0)

/** "What should it read when I put it away till spring": asked before it is done. */
export const asksBeforehand = ({ marked: { words } }: Told): boolean =>
  beforehand.test(textOf(words)) && !words.slice(1).some(({ cut }) => cut > 1)
const beforehand =
  /^(?:(?:and|but|so|ok|at) )?(?:what|which|how (?:full|many volts|high))\b(?!.*\b(?:since|already|was|were|been|have had|sat|left|stood|kept|after|for (?:\w+ )?(?:weeks|months|years))\b).*\b(?:when|before|to|if) (?:i |we |they |you )?(?:put|lay|lock|pack|store|set) (?:\w+ ){1,3}(?:away|up|down|aside|in)\b/
const howLong =
  /^(?:(?:and|but|so|ok|for) )?how (?:long|many (?:days|hours|weeks)) (?:can|may|could|should|do|does|is it|before)\b(?!.*\b(?:since|already|was|were|been|have had|sat|left|stood|kept)\b)/
