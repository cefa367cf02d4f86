// The rules of a club as a moderator tells them in words: which rule, and its value or that it is lifted.

import type { Candidate } from '../../language/candidates/index.ts'
import { isEnd } from '../../language/reading/told/slots.ts'

/** The kind of value of every rule that a sentence may set. */
export const ruleKind = 'club rule'
/** Stands for a rule that is lifted. */
export const lifted = 'none'

/** Whatever it is said of goes. */
const lifts =
  /(?<!\b(?:not|never|dont|\w+n't) (?:ever |just |yet )?)\b(?:lift|remov|cancel|delet|scrap|suspend|retir|uncap|revok|abolish|rescind|repeal|waiv|abandon|withdraw|unset|forget|ditch|bin|axe)(?:e|n?ed|e?s|n?ing|al)?\b|\b(?:get(?:ting)? rid of|(?:do|done|live) (?:away|without)|without (?:a|any) (?:limit|rule|cap)|no (?:\w+ )?(?:limit|cap|ceiling|max(?:imum)?)|bye|(?:out|away|off) with|(?:can|may|should|must|has to) (?:now |finally )?go(?= ?(?:$|[.,;:!?]|now|again|please|away))|gone|void(?:ed)?|goes away|unlimited|no (?:longer|more|need)|any (?:more|longer)|anymore|not needed|stop(?:ped)? (?:enforc|requir|ask)\w*|served (?:its|their) purpose|is (?:over|history)|undo (?=(?:the|our) \d)|free(?:d)? of)\b|(?<!cut[ -])\boff\b|\bends? (?:the|that|this|our)\b/iu
/** The same, where no other value is told to come instead: "drop it to 0.8C". */
const loosens =
  /\b(?:drop(?:s|ped|ping)?|tak(?:e|es|en|ing)\b.*\b(?:off|away|out|back|down)|reset(?:s|ting)?|(?:clear|free)(?:s|d|ed|ing)? (?:up|the|that|our|all)|relax(?:es|ed|ing)?|loosen(?:s|ed|ing)?|eas(?:e|ed|ing)|(?:back|return) to (?:the )?(?:normal|default|usual|standard))\b|\b(?:let|allow|may|can)\b.* (?:above|over|beyond|(?:more|faster) than)\b/iu
/** Another value is told to come instead. */
const sets = /\b(?:set|chang|lower|rais|increas|reduc|tighten|put|mak)(?:e|es|ed|s|ing|ting)?\b/iu
/** Who says what nobody may any longer tightens. */
const tightens =
  /\b(?:nobody|no ?one|none of|never|no (?:\w+ )?members?|(?:must|may|should|shall|can) ?(?:not|n't|never)|(?:mustn|shouldn|can)'?t|no (?:longer|more) (?:than|charg\w*|going|above|over))\b/iu

function isLiftedIn(plain: string, values: readonly Candidate[]): boolean {
  if (tightens.test(plain) || (sets.test(plain) && values.some(isGoalIn(plain)))) return false
  return lifts.test(plain) || (loosens.test(plain) && !values.some(isGoalIn(plain)))
}

/** "From 1C to 0.8C": the second is what is wanted. */
const isGoalIn =
  (plain: string) =>
  ({ start }: Candidate) =>
    /\b(?:to|at|with|by) (?:only |just |a |max )*$/iu.test(plain.slice(0, start))

/** All are to keep to it: "nobody charges above 1C", "we should all store at 3.8 V". */
const orders = [
  /\b(?:members?|people|every(?:one|body)|we|all)\b[^.?!]*\b(?:not|never|stop|avoid) (?:go(?:ing)?|charg(?:e|ing)) (?:above|over|beyond|below|under|(?:more|faster) than)\b/iu,
  /\b(?:coldest|lowest|highest|fastest|most|limit|minimum|maximum)\b[^.?!]*\b(?:we|us|our|here|club|members|every(?:one|body))\b/iu,
  /\b(?:members?|people|every(?:one|body)|we|all)\b[^.?!]*\b(?:must|may|should|shall|are to|is to) ?(?:n't|not|never)\b[^.?!]*\b(?:above|over|beyond|below|under|exceed|(?:more|faster|less|colder) than)\b/iu,
  /\b(?:nobody|no ?one|none of (?:us|you)|no (?:\w+ )?members?)\b[^.?!]*\bcharg\w*\b[^.?!]*\b(?:above|over|beyond|below|under|beneath|(?:more|faster|less|colder) than)\b/iu,
  /\b(?:every(?:one|body)|all of us|all members|we (?:\w+ )?all)\b[^.?!]*\b(?:stores?|charges?|keeps?|stays?)\b[^.?!]*\b(?:at|to|above|below|under|over|than)\b/iu,
]
/** What is set for all: "set our storage to 3.8", "club storage is 3.8 from now on", "no charging below 8 degrees". */
const settings = [
  /^\W*(?:(?:please|pls|ok|could you|can you) )*(?:set|make|change|raise|lower|put|fix)\b(?=(?:[^.?!]|\.\d)*\b(?:our|club|everyone|everybody|all of us|all members)\b)/iu,
  /^\W*(?:(?:please|pls|ok|and) )*(?:our|(?:the )?club'?s?) (?:\w+ ){1,3}(?:is|are|becomes?|goes) (?:\w+ )?[\d.,]+[^?]*\bfrom (?:now|today|tomorrow)\b/iu,
  /^\W*(?:(?:please|pls|ok|from (?:now|today|tomorrow)(?: on)?|as of (?:now|today)),? )+no (?:more )?charging (?:above|over|beyond|below|under)\b/iu,
  /\b(?:it is|it's|it was|has|have|we|committee|board) (?:decided|agreed|resolved)\b.*\b(?:at (?:the )?most|at least|no more|not more|max\w*|limit|never|above|below|over|under)\b/iu,
]
const isDue =
  /\b(?:should|must|shall|ought|has to|have to|let'?s|mind|please|pls|from \w+(?: \w+)? on|as of|we (?:want|agreed|decided)|nobody|no ?one|none|no (?:\w+ )?members?)\b/iu
/** Who tells what others do or say, or of a pack of their own, makes no rule. */
const tellsOnly =
  /\b(?:i|i'm|my|mine|says?|said|told|heard|reads?|true|right|correct|sure|is (?:it|that|this)|why|how come)\b/iu

const thinks = /\bi (?:think|guess|reckon|suggest|mean|want|would like)\b|\bi'd (?:like|say)\b/giu

/** Whether it makes a rule of one value. */
export function isOrder(plain: string, values: readonly Candidate[]): boolean {
  const figures = values.filter(({ kind, typed }) => kind !== 'clock' && /\d/.test(typed))
  const isOfRule = ({ kind, text }: Candidate) => kind === 'rate' || kind === 'temperature' || isVolts(kind, text)
  return (
    (settings.some(one => one.test(plain)) || (isDue.test(plain) && orders.some(one => one.test(plain)))) &&
    !tellsOnly.test(plain.replace(thinks, '')) &&
    figures.length === 1 &&
    figures.every(isOfRule)
  )
}

const [asksLimits, allows] = [
  /\b(?:which|what|our|every|all|list|state|show)\b.*\b(?:limits?|caps?|restrictions?)\b(?<!\bwhat limits?(?= (?:the|my|our|it|this|how)\b))/iu,
  /\bwhat (?:we|do we|the club) (?:allow|permit)s?\b/iu,
]
const ofChange = /\b(?:who|when|why|chang\w+|set|lift\w*)\b/iu
const ofClub = /\b(?:we|us|our|here|club|field|in force)\b/iu

/** Whether the limits of the club are asked for, whoever wants to know. */
export const asksRules = (plain: string, values: readonly Candidate[]): boolean =>
  values.every(({ kind }) => kind === 'clock') &&
  ofClub.test(plain) &&
  (asksLimits.test(plain) || allows.test(plain)) &&
  !ofChange.test(plain) &&
  !isLiftedIn(plain, values)

/** What a rule is called in a sentence, where its value does not say it. */
const matters = {
  storage: /\bstor(?:age|es?|ed|ing)\b/iu,
  floor: /\b(?:floor|sources?|donor|field batter(?:y|ies)|drain(?:ed)?|discharged?)\b/iu,
  coldest: /\b(?:cold(?:est)?|freez(?:e|ing)|frost|temperature|degrees?)\b|°/iu,
  rate: /\b(?:rates?|fast(?:er|est)?|speed|amps?|currents?)\b|\b\d[\d.,]* ?c\b/iu,
  full: /\b(?:full|top|tops|high(?:est)?|charge[ds]? (?:volt|to)|cut-?off|max(?:imum)?|volts?|voltage|end)\b/iu,
}
type Limit = keyof typeof matters
/** Those that can be lifted. */
export const limits = Object.keys(matters) as Limit[]

/** "Cancel that limit": of those that were spoken of before. */
const pointsBack = /\b(?:that|this|it)\b/iu

type Rules = Readonly<Record<string, string>>

/** The details of the command that sets them, so far as the sentence tells them; `before` are those that were told last. */
export function rulesTold(plain: string, values: readonly Candidate[], before: Rules = {}): Rules {
  const isLifted = isLiftedIn(plain, values)
  const called = limits.filter(limit => matters[limit].test(plain))
  const ofVolts = called.find(limit => limit === 'storage' || limit === 'floor') ?? 'full'
  const told: Record<string, string> = {}
  const isGoal = isGoalIn(plain)
  // "Our chargers end at C/20": no rate that anybody may charge with.
  const ends = values.find(isEnd)
  if (ends) told.ends = isLifted ? lifted : ends.text.replace(/^a /, '')
  for (const { kind, text } of values
    .filter(value => !isEnd(value))
    .toSorted((a, b) => Number(isGoal(b)) - Number(isGoal(a)))) {
    const limit = kind === 'rate' ? 'rate' : kind === 'temperature' ? 'coldest' : isVolts(kind, text) && ofVolts
    if (limit) told[limit] ??= isLifted ? lifted : withoutCells(text)
  }
  if (isLifted && Object.keys(told).length === 0) {
    const isOfCells = values.some(({ kind }) => kind === 'chemistry')
    const those = pointsBack.test(plain) ? limits.filter(limit => before[limit] !== undefined) : []
    const meant = [called.slice(0, 1), those, limits].find(some => some.length > 0) ?? []
    for (const limit of meant) if (!(isOfCells && limit === 'coldest')) told[limit] = lifted
  }
  return { ...told, ...choicesTold(plain, isLifted) }
}

const isVolts = (kind: string, text: string): boolean =>
  (kind === 'state' || kind === 'voltage') && /^[\d.]+ ?V\b/.test(text)

/** "3.8V per cell": rules are for a cell anyway. */
const withoutCells = (text: string): string => text.replace(/ per cell$/, '')

function choicesTold(plain: string, isLifted: boolean): Readonly<Record<string, string>> {
  const told: Record<string, string> = {}
  const mark = /\bcommas?\b/iu.test(plain) ? 'comma' : /\bpoints?\b/iu.test(plain) ? 'point' : undefined
  if (mark && /\bdecimals?\b|\bnumbers?\b/iu.test(plain)) told.decimal = mark
  if (/\bprivate(?:ly)?\b/iu.test(plain)) told['private-answers'] = /\bmod/iu.test(plain) ? 'moderators' : 'everyone'
  if (/\bgentl[ey]\b/iu.test(plain)) told.gentle = isLifted || /\bno\b/iu.test(plain) ? 'no' : 'yes'
  return told
}
