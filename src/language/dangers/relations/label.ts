// What a label tells, for whoever reads it out.

import { type Relation, type Told, textOf } from './relation.ts'
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

/** "Used 1850 mAh of my 3S 2700": taken out of it, and not bought so. */
export const isUsedUp = (told: Told): boolean => {
  const { words } = told.marked
  const used = words.flatMap(({ w }, at) => (w === 'used' ? [at] : []))
  const isSoMuch = (at: number) =>
    [1, 2].some(n => words[at + n]?.value !== undefined && ofAmount.test(words[at + n + 1]?.w ?? ''))
  const others = words.some(({ w }, at) => strange.test(w) && !used.includes(at))
  return used.length > 0 && used.every(isSoMuch) && !others && !told.has('label') && !isUnknown(textOf(words))
}

const ofAmount = /^(?:mah|ah|of|out|%|percent|in)$/

const type = '(?:hv|lihv|lipo|li ?po|life|li ?fe|liion|li ?ion|lion)'
/** "Might be HV, might be the ordinary sort". */
const eitherType = new RegExp(
  String.raw`\b(?:might|may|could|can) be (?:an? |the )?(?:${type}|ordinary|normal|plain)\b.{0,30}\b(?:or|might|may|could|maybe|perhaps)\b.{0,20}\b(?:${type}|ordinary|normal|plain|usual|standard)\b|\b(?:not sure|unsure|no idea|dont know|cant tell)(?: \w+){0,3} (?:${type}) or (?:${type}|ordinary|normal|plain)\b`,
)

/** Two types are told of one pack, and it may be either. */
export const typeInDoubt: Relation = ({ marked: { words } }) =>
  eitherType.test(textOf(words)) ? { danger: 'unknownPack', from: 0, to: words.length } : undefined
