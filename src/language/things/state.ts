// Where a charge starts and where it is to go: `3.7V`, `11.1V`, `20%`, `full`, `storage`, `empty`.

import { chemistries } from '../../charging/things/chemistries.ts'
import type { Level, LevelName, State } from '../../charging/things/level.ts'
import type { Pack } from '../../charging/things/pack.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { nothingThere } from '../../ground/plain-text.words.ts'
import type { Problem, Wanted } from '../../ground/problem.ts'
import { Sentence } from '../candidates/sentence/sentence.ts'
import { highestCell_V, levelNamed, ofCell, ofPack } from '../parts/level-words.ts'
import { quantityAt, writeQuantity } from '../quantities/quantity.ts'
import { oddNumberProblem } from '../scan/number.ts'
import type { Read } from '../scan/read.ts'
import * as texts from './state.words.ts'

export type { Level } from '../../charging/things/level.ts'

/** Of a pack all that its state needs. */
type Series = Pick<Pack, 'series'> & Partial<Pick<Pack, 'chemistry'>>

/** Volts of a cell below which they cannot be meant: a resting cell is dead there, and no charge ends there. */
const lowest =
  (which: 'damage_V' | 'restFloor_V', usual_V: number) =>
  (pack: Series | undefined): number =>
    pack?.chemistry
      ? Math.min(usual_V, pack.chemistry[which].value)
      : Math.min(...chemistries.map(chemistry => chemistry[which].value))
const lowestStart_V = lowest('damage_V', 2)
const lowestGoal_V = lowest('restFloor_V', 3)

const start: Wanted = { expected: texts.startWanted, example: '3.7V' }
const goal: Wanted = { expected: texts.goalWanted, example: 'full' }

/** A share below it is shown as none. */
const leastShare = 0.005

/**
 * Reads where a pack stands. Pack volts need the pack. Throws a Problem that names the token, and one that asks for
 * volts where all that is told is that nothing is left: that may be a pack that must never be charged.
 */
export function readState(text: string, pack?: Series): Read<Level> {
  const sentence = new Sentence(plainText(text), false)
  if (namedLevel(sentence) === '') throw tooLittle(text)
  const state = readAnyState(text, pack)
  if (state.value.kind === 'soc' && state.value.soc < leastShare) throw tooLittle(text)
  return state
}

/** The same where nothing is to be done with the pack: any share is one to ask about. */
export const readAnyState = (text: string, pack?: Series): Read<Level> => readLevel(text, pack, start, lowestStart_V)

const tooLittle = (text: string): Problem =>
  problemAt(plainText(text), texts.tooLittleTold, { expected: texts.voltsOfLowest, example: '3.1V per cell' })

/** Reads where a charge is to go. Whether the chemistry allows that is not judged here. */
export function readTarget(text: string, pack?: Series): Read<Level> {
  const target = readLevel(text, pack, goal, lowestGoal_V)
  if (target.value.kind !== 'named' || target.value.name !== 'empty') return target
  throw problemAt(text, texts.cannotEndEmpty, goal)
}

function readLevel(
  text: string,
  pack: Series | undefined,
  wanted: Wanted,
  lowestCell_V: typeof lowestStart_V,
): Read<Level> {
  const sentence = new Sentence(plainText(text), false)
  const plain = sentence.text
  const volts = quantityAt(sentence, 0, 'voltage')
  const share = quantityAt(sentence, 0, 'share', { phrase: texts.socPhrase })
  const named = namedLevel(sentence)
  if (named?.endsWith('%')) return certain({ kind: 'soc', soc: Number(`${named.slice(0, -1)}e-2`) })
  if (named) return namedAs(named as LevelName, plain)
  if (share?.after === sentence.tokens.length) return certain({ kind: 'soc', soc: share.value })
  const level = volts && levelOf(sentence, volts, pack, lowestCell_V)
  if (level) return level
  if (cellVolts.test(plain)) {
    const perCell_V = Number(plain.replace(',', '.'))
    return { value: rest(perCell_V, plain), assumed: [texts.bareAsPerCell(plain, perCell_V)] }
  }
  const odd = oddNumberProblem(plain, wanted)
  if (odd) throw odd
  const what = plain === '' ? nothingThere : /^[+-]?[\d.,]+$/.test(plain) ? texts.voltsOrPercent : texts.notALevel
  throw problemAt(plain, what, wanted)
}

const certain = (value: Level): Read<Level> => ({ value, assumed: [] })
/** `3.6` can only be volts per cell; `4` or `20` could be a percentage too. */
const cellVolts = /^[234][.,]\d{1,3}$/

/** What the whole text is written as, where it is words for a level; empty where they tell of nothing left. */
function namedLevel(sentence: Sentence): string | undefined {
  const named = levelNamed(sentence, 0)
  return named?.after === sentence.tokens.length ? named.text : undefined
}

function namedAs(name: LevelName, typed: string): Read<Level> {
  const said = name !== 'empty' || typed.toLowerCase().endsWith('landed')
  return { value: { kind: 'named', name }, assumed: said ? [] : [texts.emptyIsLanded(typed)] }
}

/** Undefined where more than what the volts are of stands behind them. */
function levelOf(
  sentence: Sentence,
  { value: volts, after }: { readonly value: number; readonly after: number },
  pack: Series | undefined,
  lowestCell_V: typeof lowestStart_V,
): Read<Level> | undefined {
  const end = sentence.tokens.length
  const token = sentence.typed(0, after)
  if (sentence.phraseEnd(after, ofCell) === end) return certain(rest(volts, token))
  const isOfPack = sentence.phraseEnd(after, ofPack) === end
  if (!isOfPack && after < end) return undefined
  if (isOfPack || volts > highestCell_V) return certain(packVolts(volts, token, pack))
  const series = pack?.series ?? 1
  if (series > 1 && volts / series >= lowestCell_V(pack))
    throw problemAt(token, texts.cellOrPack, { expected: texts.sayWhich, example: `${token} per cell` })
  return { value: rest(volts, token), assumed: series > 1 ? [texts.asPerCell(volts)] : [] }
}

function rest(perCell_V: number, token: string): State {
  if (perCell_V <= highestCell_V) return { kind: 'rest', perCell_V }
  throw problemAt(token, texts.noCellSoHigh, { expected: texts.upToPerCell(highestCell_V), example: '3.85V per cell' })
}

function packVolts(volts: number, token: string, pack?: Series): State {
  const perCell_V = pack && Number((volts / pack.series).toPrecision(12))
  if (perCell_V !== undefined && perCell_V <= highestCell_V) {
    return { kind: 'rest', perCell_V, pack_V: volts }
  }
  throw problemAt(token, pack ? texts.noPackSoHigh(pack.series) : texts.needsPack, {
    expected: texts.voltsUpTo(highestCell_V, pack && highestCell_V * pack.series),
    example: '3.85V per cell',
  })
}

/** Canonical text; reading it gives the same level. */
export function writeLevel(level: Level): string {
  // What "empty" means was said when it was read.
  if (level.kind === 'named') return level.name === 'empty' ? 'landed' : level.name
  if (level.kind === 'soc') return writeQuantity(level.soc, 'share')
  if (level.pack_V !== undefined) return `${writeQuantity(level.pack_V, 'voltage')} pack`
  return `${writeQuantity(level.perCell_V, 'voltage')} per cell`
}
