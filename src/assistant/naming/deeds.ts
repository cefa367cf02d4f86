// What is to be done with something that is kept: told by verbs and by what is named, whatever its name sounds like.

import type { Candidate } from '../../language/candidates/index.ts'
import { ruleIn } from './told-answers.ts'
import { asksRules, isOrder } from './told-rules.ts'
import { besideDeeds, type Deed, deedsIn } from './verbs.ts'

/** "The answer on puffed packs", "the crashed packs card": what a sentence calls one that somebody wants to deal with. */
export function answerCalled(plain: string): string | undefined {
  const [called] = onWhat.exec(plain) ?? ofWhat.exec(plain) ?? []
  const rest = plain.replace(called ?? '', '')
  return called !== undefined && besideDeeds(rest) !== rest ? called : undefined
}
const onWhat = /\b(?:answers?|cards?|notices?) (?:on|about|titled|called|named) [^.,;:?!]+/iu
const ofWhat = /\b(?:the|our|that) (?:[^.,;:?! ]+ ){1,4}(?:answer|card|notice)s?\b/iu

/** It asks about doing it, and wants nothing done: whoever asks whether you would wants it. */
const asksAbout =
  /^\W*(?:(?:and|so|but|ok|hi|hey|hello|please) )*(?:how|what|why|who|whose|which|when|where|if|is|are|was|were|do|does|did|has|am|(?:may|can|could|should) (?:(?:i|we)(?! (?:have|get|see)\b)|members?|any\w*|every\w*|some\w*|people|one|a)|(?:would|will) \w+ing)\b|\b(?:tell|explain|wonder|know|ask(?:ing)?)(?: \w+)? (?:why|whether|if|how|who|what)\b|\b(?:what happens|who may|allowed to|even if)\b/iu
const saysWhat = /\bwhat(?:'s| do| does| did| is)\b|\bwhere(?:'s| is)\b/iu

/** What a sentence is about that speaks of a standard answer. */
export const answerNoun =
  /\b(?:answers?|cards?|pins?|pinned|notices?|faqs?|replies|reply|titles?|headings?|what we (?:say|said|have) (?:about|on|of))\b/iu
const otherNoun =
  /\b(?:charges?|log\w*|entry|entries|reminders?|alarms?|timers?|pings?|notes?|limits?|rules?|caps?|lessons?)\b/iu
/** "This", of what was just answered. */
const ofLast =
  /\b(?:this|that|it|these|those|that's|(?:the|your) (?:last|previous|above|latest) (?:one|answer|reply|message|thing|bit)|(?:the|your) (?:answer|reply)(?: above)?|what you(?:'ve)? (?:just |have )?(?:said|told|wrote|written|answered|gave)|what was (?:just )?said)\b/iu
const newAnswer = /\b(?:new|another) (?:\w+ )?(?:answer|card|notice|faq)\b/iu
/** "Save under …", "pin". */
const ofNothing = /^\W*(?:please |pls )?(?:pin|keep|save|store|post)(?: please| pls)?(?: (?:under|as)\b|\W*$)/iu
const ofAnswers =
  /\b(?:pin\w*|post\w*|board|answers?|reply|replies|cards?|faq|everybody|everyone|all of us|official|standing|standard|what you)\b/iu
const ofPack = /\b(?:packs?|batter(?:y|ies)|chargers?|my|mine)\b/iu
/** "Remember my charger: …" */
const ofOwn =
  /^\W*(?:(?:please|pls|can you|could you) )*(?:remember|save|store|keep)(?: this| that)? (?:my|our) (?:\w+ ){0,2}(?:packs?|batter(?:y|ies)|chargers?|supply|source)\b/iu
const ofKit: ReadonlySet<string> = new Set(['pack', 'charger', 'source'])
const ofBefore = /\b(?:old|previous|former|earlier|word(?:ing|s)|text|was|were|before)\b/iu
const limitNoun = /\b(?:limit(?:s|ation|ations)?|caps?|ceiling|restrictions?|rule)\b/iu
const changeNoun = /\b(?:change|alteration|edit|wording)\b/iu
/** What a rule of the club is made of. */
const ofRules = new Set<string>(['rate', 'voltage', 'state', 'temperature', 'chemistry', 'number', 'count'])

interface Named {
  /** Of a standard answer that is there. */
  readonly title: string | undefined
  /** Its very words, or in quotes. */
  readonly isVerbatim: boolean
  /** What the asker removed lately. */
  readonly gone: string | undefined
  /** Names of the kit that stand in it. */
  readonly saved: readonly string[]
  /** What somebody wants to keep is to bear. */
  readonly heading: string | undefined
  /** What it is to say. */
  readonly text: string | undefined
}

interface Told {
  readonly named: Named
  /** Details of rules that it lifts. */
  readonly isLifting: boolean
  readonly values: readonly Candidate[]
  /** The club has standard answers. */
  readonly hasAnswers: boolean
  /** Something was asked back. */
  readonly isPending: boolean
  /** What was spoken of last is something that was changed. */
  readonly isBehindChange: boolean
  /** Whether the last answer was about a pack; undefined where there was none. */
  readonly isOfPack: boolean | undefined
}

/** "Pin this here: …", "post a notice: …". */
const pinsWords = /^\W*(?:(?:please|pls|can you|could you) )*(?:pin|post|hang|put up)\b[^:]*: /iu

/** "List every pin that is up", "what is pinned here": all of them. */
const asksPins =
  /^\W*(?:(?:please|pls|can you|could you) )*(?:list|show(?: me| us)?|give (?:me|us))(?: (?:all|every|each|the|our|of))*(?: (?:pins?|pinned \w+|notices?|cards?|standard answers?))\b(?! (?:on|about|titled|called|named)\b)|\b(?:what(?:'s| is| are| has been| do we have)|which (?:\w+ )?(?:is|are|do we have)) (?:all )?(?:pinned(?! (?:answers?|messages?|cards?|posts?))|up on the board)\b|\b(?:what|which \w+) (?:did|have) (?:we|you) (?:pin|pinned)\b|\b(?:which|what) (?:pins|notices|cards) (?:are|do|have)\b/iu

/** A title that may be a word of anything is meant where little else is said. */
const little = 5

/** Whether the sentence is about a standard answer that is there. */
export function isOfAnswer(plain: string, { title, isVerbatim }: Named): boolean {
  if (title === undefined || answerNoun.test(plain)) return title !== undefined
  const rest = without(plain, title)
  const isMeant = title.includes(' ') || rest.split(' ').length <= little
  return isVerbatim && isMeant && (deedsIn(rest).length > 0 || /->|=>/.test(rest))
}

const ofCalled: ReadonlySet<Deed> = new Set(['remove', 'edit', 'move'] as const)

/** The command that verbs and names tell for sure; undefined where they leave it to what the words sound like. */
export function commandMeant(
  plain: string,
  { named, isLifting, values, hasAnswers, isPending, isBehindChange, isOfPack }: Told,
): string | undefined {
  const { gone, saved, heading, title: found } = named
  // "Pin that as Wren fast" is none of "Wren".
  const aside = without(plain, heading)
  const isOfHeading = without(aside, found) === aside && ofLast.test(aside) && deedsIn(aside).includes('keep')
  const title = isOfHeading ? undefined : found
  const figures = values.filter(({ kind, text }) => kind !== 'count' && /\d/.test(text))
  const isInName = ({ typed }: Candidate) => (heading ?? '').toLowerCase().includes(typed.toLowerCase())
  const hasValues = !figures.every(isInName)
  const rest = without(plain, title ?? gone ?? heading)
  const deeds = deedsIn(rest)
  const isAbout = title !== undefined && isOfAnswer(plain, named)
  const does = (deed: Deed) => deeds.includes(deed)
  if (isAbout && (does('show') || /where/iu.test(rest)) && saysWhat.test(rest)) return 'answer show'
  if (!isPending && isBare(plain, title)) return 'answer show'
  if (asksRules(rest, values)) return 'house show'
  if (title === undefined && asksPins.test(rest)) return 'answer list'
  if (asksAbout.test(rest)) return undefined
  if (isOrder(plain, values)) return 'house set'
  if (gone !== undefined && title === undefined && does('restore')) return 'undo'
  const [first] = deeds
  if (!isAbout && hasAnswers && answerCalled(plain) && first && ofCalled.has(first)) return `answer ${first}`
  if (isAbout && !newAnswer.test(plain)) {
    const [wanted] = /\u25a1\W*(?:->|=>)/u.test(rest) ? ['edit' as const] : deeds.filter(deed => deed !== 'keep')
    if (wanted === 'restore') return ofBefore.test(rest) ? 'undo' : 'answer post'
    return wanted && `answer ${wanted}`
  }
  if (newAnswer.test(plain) && (heading ?? named.text) !== undefined) return 'answer save'
  const pointsAtChange = ofLast.test(rest) || changeNoun.test(rest)
  if (isBehindChange && first === 'restore' && pointsAtChange && values.length === 0) return 'undo'
  const isLimit = figures.some(({ kind }) => kind !== 'clock' && ofRules.has(kind))
  if (!isLimit && (ruleIn(plain) ?? (pinsWords.test(plain) ? named.text : undefined)) !== undefined)
    return 'answer save'
  if (isOfPack !== undefined && !hasValues && does('keep') && (ofLast.test(rest) || ofNothing.test(rest))) {
    if (!isForKit(rest, heading, isOfPack)) return 'answer save'
    if (heading !== undefined) return 'kit save'
  }
  if (ofOwn.test(plain) && values.some(({ kind }) => ofKit.has(kind))) return 'kit save'
  const isOfRules = saved.length === 0 && values.every(({ kind }) => ofRules.has(kind))
  if (isLifting && limitNoun.test(plain) && !answerNoun.test(plain) && isOfRules) return 'house set'
  if (first === 'restore' && limitNoun.test(plain) && values.length === 0) return 'undo'
  if (first === 'remove' && saved.length > 0 && !hasValues && !otherNoun.test(plain)) return 'kit remove'
  return undefined
}

const isBare = (plain: string, title: string | undefined): boolean =>
  title !== undefined && /^\W*(?:(?:the|our) )?\u25a1\W*$/iu.test(without(plain, title))

/** "Save that pack as hawk": what is kept is the pack, not what was said of it. */
const isForKit = (rest: string, heading: string | undefined, isOfPack: boolean): boolean =>
  isOfPack && !ofAnswers.test(rest) && (ofPack.test(rest) || heading === undefined || !heading.includes(' '))

const without = (plain: string, name: string | undefined): string => {
  const at = name === undefined ? -1 : plain.toLowerCase().indexOf(name.toLowerCase())
  return at < 0 ? plain : `${plain.slice(0, at)}\u25a1${plain.slice(at + (name ?? '').length)}`
}
