// Options that take what a meter or charger shows: volts cell by cell, resistances, a load with its volts.

import type { LoadReading } from '../../charging/upkeep/health.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { nothingThere } from '../../ground/plain-text.words.ts'
import { Problem } from '../../ground/problem.ts'
import * as notation from '../quantities/quantities.ts'
import type { ListedReading } from './kinds.words.ts'
import * as texts from './kinds.words.ts'
import { plainKind } from './value-kind.ts'

const mostCells = 14
const separators = / ?[;/|] ?|,? and |, ?(?=\d[.,])|, | /u

interface ListWords {
  readonly listed: ListedReading
  readonly example: string
}

/** One value a cell, up to fourteen. */
function listOf(text: string, { listed, example }: ListWords, readOne: (token: string) => number): number[] {
  const tokens = plainText(text)
    .split(separators)
    .filter(token => token !== '')
  const wanted = { expected: texts.oneForEachCell(listed, mostCells), example }
  if (tokens.length === 0) throw new Problem({ what: nothingThere, ...wanted })
  if (tokens.length > mostCells) {
    throw problemAt(text, texts.moreCellsThan(mostCells), wanted)
  }
  return tokens.map(readOne)
}

const bare = /^[+-]?[\d.,]+$/
/** The unit of a bare numeral is the list's. */
const withUnit = (token: string, unit: string): string => (bare.test(token) ? `${token}${unit}` : token)
const cellRange = { phrase: texts.voltsOfCell, max: 10, example: '3.82V' }

export const cellVoltsKind = plainKind<readonly number[]>(
  'cell volts',
  text =>
    listOf(
      plainText(text).replace(/(?<=\d) ?(m?v)(?![a-z])/giu, '$1'),
      { listed: 'volts', example: '3.82 3.83 3.79 3.83' },
      token => notation.readVoltage(withUnit(token, 'V'), cellRange),
    ),
  cells => cells.map(notation.writeVoltage).join(' '),
  ['3.82 3.83 3.79 3.83', '4.20 4.19 4.20'],
)

const cutoffRange = { phrase: texts.cutoffOfCell, min: 2.5, max: 4.5, example: '4.20V' }

export const cutoffsKind = plainKind<readonly number[]>(
  'cutoffs',
  text =>
    listOf(text.replace(/ ?v(?:olts?)?(?: per cell)?$/iu, ''), { listed: 'cutoffs', example: '4.20/4.35V' }, token =>
      notation.readVoltage(withUnit(token, 'V'), cutoffRange),
    ),
  cutoffs_V => cutoffs_V.map(notation.writeVoltage).join('/'),
  ['4.20/4.35V', '4.15/4.20/4.35V'],
)

const resistanceRange = { phrase: texts.resistanceOfCell, max: 1, example: '6mΩ' }

export const cellResistancesKind = plainKind<readonly number[]>(
  'cell resistances',
  text => {
    const shared = /(?<=[\d ])(mΩ|mohms?|milliohms?|Ω|ohms?)$/iu.exec(plainText(text))?.[1] ?? ''
    const joined = plainText(text).replace(/(?<=\d) (?=(?:m|milli)?(?:Ω|ohm))/giu, '')
    return listOf(joined, { listed: 'resistances', example: '5 5 6 5 mΩ' }, token =>
      notation.readResistance(withUnit(token, shared), resistanceRange),
    )
  },
  cells => cells.map(notation.writeResistance).join(' '),
  ['12mΩ', '5 5 6 5 mΩ'],
)

export const conditionKind = plainKind<'rest' | 'full'>(
  'condition',
  text => {
    const word = plainText(text).toLowerCase()
    if (word === 'rest' || word === 'at rest') return 'rest'
    if (word === 'full' || word === 'at full') return 'full'
    throw problemAt(text, texts.notACondition, { expected: texts.restOrFull, example: 'rest' })
  },
  condition => condition,
  ['rest', 'full'],
)

const loadWords = /^(?:(rest|resting|no load)|(\S+ ?m?a(?:mps?)?)),? (?:@ |at )?(\S+ ?m?v(?:olts?)?)$/iu

export const loadKind = plainKind<LoadReading>(
  'load',
  text => {
    const match = loadWords.exec(plainText(text))
    if (!match) {
      throw problemAt(text, texts.notALoad, { expected: texts.ampsAndVolts, example: '5A 11.9V' })
    }
    const [, , amps, volts = ''] = match
    return { current_A: amps === undefined ? 0 : notation.readCurrent(amps), pack_V: notation.readVoltage(volts) }
  },
  ({ current_A, pack_V }) =>
    `${current_A === 0 ? 'rest' : notation.writeCurrent(current_A)} ${notation.writeVoltage(pack_V)}`,
  ['rest 12.4V', '5A 11.9V'],
)
