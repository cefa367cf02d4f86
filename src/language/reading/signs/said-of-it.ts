// Turns of phrase that tell which command is meant, whatever else a sentence sounds like.

import type { Candidate } from '../../candidates/sentence/candidate.ts'

const takenAlong =
  /\b(?:on|onto|in|by) (?:a|an|the) (?:plane|aeroplane|airplane|airliner|flight)\b|\b(?:airlines?|cabin|airports?|luggage|baggage|suitcase|by air|carry-?on|carry on (?:bag|limit|rule|wh|allowance)|check(?:ed)?[- ]in|fl(?:y|ies|ying|own) commercial(?:ly)?|commercial (?:flight|plane|airliner)s?)\b/i
const ofCharge = /\b(?:amps?|amperes?|charging current)\b/i
const ofPacks: ReadonlySet<string> = new Set(['pack', 'count', 'chemistry', 'board'])

/** Whether packs are taken along in an aeroplane, and not charged. */
export const isTakenAlong = (text: string, values: readonly Candidate[]): boolean =>
  values.length > 0 && values.every(({ kind }) => ofPacks.has(kind)) && isAboard(text)

const ofLabels: ReadonlySet<string> = new Set(['energy', 'count', 'voltage', 'state'])

/** "Batteries say 77 Wh, 15.4 V, cabin or suitcase": the same of packs whose label alone is told. */
export const isLabelTakenAlong = (text: string, values: readonly Candidate[]): boolean =>
  values.some(({ kind }) => kind === 'energy') && values.every(({ kind }) => ofLabels.has(kind)) && isAboard(text)

const isAboard = (text: string): boolean => takenAlong.test(text) && !ofCharge.test(text)

export const asksEnd =
  /\b(?:until|till|til|up to|to) (?:which|what|how many) volt\w*\b.*\bcharg(?:e|ed|ing)\b|\bcharg(?:e|ed|ing)\b.*\b(?:until|till|til|up to|to) (?:which|what|how many) volt/i

export const inTurn =
  /\bone (?:after|by) (?:the other|another|one)\b|\bone at a time\b|\bin (?:a row|turn)\b|\bafter each other\b/i

/** Said with no question, and nothing that is wanted. */
export const standsThere =
  /^(?!.*\b(?:what|how|when|should|can|stor(?:e|age|ing)|keep)\b).*\b(?:stands|sits|rests) at [\d.,]+ ?v?(?: (?:a|per|each) cell)?\W*$/i

/** Said with no question: what went into a pack. */
export const tookSoMuch =
  /^(?!.*\?)(?!.*\b(?:what|how|when|should|can|will|would|does|did)\b).*\btook (?:back )?[\d.,]+ ?m?ah\b/i

export const asksAge = /\b(?:how (?:healthy|worn|tired|aged)|still healthy|age?ing|health of)\b/i

export const ofClub = /\b(?:our|club(?:'?s)?|all the|here)\b.*\bchargers?\b|\bchargers?\b.*\b(?:club|here)\b/i

/** "What does the generator have to deliver": of what feeds, and not what is set. */
export const asksNeed =
  /\b(?:what|how (?:much|many|big|large|strong|powerful))\b.*\b(?:generator|supply|psu|inverter|adapt[eo]r|brick|source|outlet|station)s?\b.{0,12}\b(?:have to|has to|had to|must|needs? to|should|got to) (?:\w+ )?(?:deliver|give|supply|provide|put out|feed|be)\b/i

/** "How many 3S 2200 will the 30 Ah box lift": what feeds is told, and so many packs are asked for. */
export const asksPacks = (text: string, values: readonly Candidate[]): boolean =>
  /\bhow many (?!amps?\b|minutes?\b|hours?\b|volts?\b|watts?\b|m?ah\b|wh\b|cells?\b|times? (?:did|have)\b)/i.test(
    text,
  ) && values.some(({ kind, text: of }) => kind === 'source' && /\d(?:m?Ah|Wh)\b/.test(of))

/** "Five batteries, but one charger, one output": they take their turns. */
export const oneForAll = /\b(?:one|single|a single|only one) (?:charger|output|outlet|port|channel)\b/i

/** What a source gives decides, and not what it holds. */
export const atOnce = /\b(?:at (?:once|a time|the same time)|in parallel|simultaneously|together)\b/i

/** "A 900 W generator, how many at the same time". */
export const asksAtOnce = (text: string, values: readonly Candidate[]): boolean =>
  /\bhow many\b/i.test(text) && atOnce.test(text) && values.some(({ kind }) => kind === 'source')

/** What a charge is asked about, and what a wire is. */
const asksCharge =
  /\b(?:how long|how many (?!amp|volt|watt)|(?:what|which) (?:current|amps|supply)|what (?:do|should|can) i set|plan)\b/i
const asksWire = /\b(?:carr(?:y|ies)|bears?|los[es]|loss|drops?|dropped|fuse|thick|thin|enough)\b/i

/** "How long over 5 m of AWG 16": the lead is a part of the charge, and not asked about. */
export const isOverLead = (text: string): boolean => asksCharge.test(text) && !asksWire.test(text)

/** "Which one charges faster": two are compared, and not charged one after the other. */
export const asksWhich = /\bwhich\b.*\b(?:faster|quicker|sooner|slower|longer|heavier|cheaper)\b/i
