// What a label tells, for whoever reads it out.

import { type Told, textOf } from './relation.ts'
import { capacityIn, chemistryIn, countIn } from './values.ts'

const strange =
  /^(?:found|bought|used|second|flea|swap|strange|unknown|unmarked|mystery|nobody|gave|given|guess|maybe|perhaps|label|sticker|print|writing|nothing|unread)/

/** Whether type, cells and capacity are told, and nothing of where it came from or that they are guessed. */
export const isLabelled = ({ values, has, marked: { words } }: Told): boolean =>
  chemistryIn(values) !== undefined &&
  countIn(values) !== undefined &&
  capacityIn(values) !== undefined &&
  !has('label') &&
  !isUnknown(textOf(words)) &&
  !words.some(({ w }) => strange.test(w))

/** "No idea how many mAh it has": whatever else is told, that is not. */
const isUnknown = (text: string): boolean => knowsNot.test(text) && ofLabel.test(text)
const knowsNot = /\b(?:(?:dont|not) (?:really )?(?:know|sure)|no (?:idea|clue)|unsure|cant (?:read|tell|say))\b/
const ofLabel = /\b(?:mah|chemistry|types?|kind|capacity|maker?|cells?|lipo or|or lipo|lihv or|or lihv|what it is)\b/

/** "They are round Li-ion cells": what they are like, and nothing that swells. */
export function isRoundCell({ marked: { words }, values, has }: Told): boolean {
  const isKind = (at: number) => values.some(({ kind, from }) => kind === 'chemistry' && from === at)
  const isRound = words.some(
    ({ w }, at) =>
      w === 'round' && (isKind(at + 1) || isKind(at - 3) || /^(?:cells?|ones?)$/.test(words[at + 1]?.w ?? '')),
  )
  return isRound && !has('swell')
}

/** "No idea since when": what nobody knows is a time, and not the pack. */
export const isTimeUnknown = ({ marked: { words } }: Told): boolean =>
  words.some(({ w }, at) => /^(?:since|until)$/.test(w) && words[at + 1]?.w === 'when')
