// What the answer rests on though nobody said it: never a plain go.

import { type Danger, dangers } from './dangers.ts'
import { practice, type Rule, type Weight } from './rule.ts'

const doubted = <const W extends Weight>(weight: W): Rule<W> => ({
  weight,
  from: practice('what was not told is not taken for fine'),
})

/** A danger that the words may well tell, though not for certain. */
export type Maybe = `maybe${Capitalize<Danger>}`

export const maybe = (danger: Danger): Maybe => `maybe${danger[0]?.toUpperCase()}${danger.slice(1)}` as Maybe

const maybes = Object.fromEntries((Object.keys(dangers) as Danger[]).map(danger => [maybe(danger), doubted('must')]))

export const doubts = {
  /** The count of cells was not told: volts are told of one. */
  cellsUnknown: doubted('must'),
  /** The count of cells was not told: it is taken from the volts of the pack. */
  cellsByVolts: doubted('must'),
  /** The likeliest was taken; the answer says what the others would be. */
  chemistryAssumed: doubted('must'),
  /** What was told of the pack is so old that it may be otherwise by now. */
  askedLongAgo: doubted('must'),
  /** A danger was told before, and taken back or only asked about. */
  toldBefore: doubted('must'),
  ...(maybes as Readonly<Record<Maybe, Rule<'must'>>>),
  /** Words of the question that may matter were not understood. */
  notUnderstood: doubted('care'),
  /** Asked in a language that is read in part only. */
  foreignTongue: doubted('care'),
} as const satisfies Readonly<Record<string, Rule>>

export type Doubt = keyof typeof doubts

/** Doubts about the pack: where none is dealt with they decide nothing. */
export const ofPack: readonly Doubt[] = ['cellsUnknown', 'cellsByVolts', 'chemistryAssumed', 'askedLongAgo']
