// Where a charge starts and where it is to go: `3.7V`, `11.1V`, `20%`, `full`, `storage`, `empty`.

import { chemistries } from '../../charging/things/chemistries.ts'
import type { Level, State } from '../../charging/things/level.ts'
import type { Pack } from '../../charging/things/pack.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { nothingThere } from '../../ground/plain-text.words.ts'
import type { Problem, Wanted } from '../../ground/problem.ts'
import { writeQuantity } from '../quantities/quantity.ts'
import { oddNumberProblem } from '../scan/number.ts'
import type { Read } from '../scan/read.ts'
import { Scanner } from '../scan/scanner.ts'
import { highestCell_V, type LevelWords, takeLevelWords } from './level-words.ts'
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
const dead = /^(?:completely |totally |stone )?dead(?: flat)?$/iu

/**
 * Reads where a pack stands. Pack volts need the pack. Throws a Problem that names the token, and one that asks for
 * volts where all that is told is that nothing is left: that may be a pack that must never be charged.
 */
export function readState(text: string, pack?: Series): Read<Level> {
  if (dead.test(plainText(text))) throw tooLittle(text)
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
  const scan = new Scanner(plainText(text))
  const words = takeLevelWords(scan)
  if (words && scan.done) return levelOf(words, pack, lowestCell_V)
  const odd = oddNumberProblem(scan.text, wanted)
  if (odd) throw odd
  const what =
    scan.text === '' ? nothingThere : /^[+-]?[\d.,]+$/.test(scan.text) ? texts.voltsOrPercent : texts.notALevel
  throw problemAt(scan.text, what, wanted)
}

function levelOf(words: LevelWords, pack: Series | undefined, lowestCell_V: typeof lowestStart_V): Read<Level> {
  if (words.kind === 'soc') return { value: { kind: 'soc', soc: words.soc }, assumed: [] }
  if (words.kind === 'named') {
    const { name, token } = words
    const said = name !== 'empty' || token.toLowerCase().endsWith('landed')
    return { value: { kind: 'named', name }, assumed: said ? [] : [texts.emptyIsLanded(token)] }
  }
  const { kind, volts, token } = words
  if (kind === 'bare') {
    return { value: rest(volts, token), assumed: [texts.bareAsPerCell(token, volts)] }
  }
  if (words.of === 'cell') return { value: rest(volts, token), assumed: [] }
  if (words.of === 'pack' || volts > highestCell_V) return { value: packVolts(volts, token, pack), assumed: [] }
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
