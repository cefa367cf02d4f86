// What a plain sentence holds: its packs, chargers, sources, levels and quantities, and the words around them.

import { shortened } from '../../ground/plain-text.ts'
import { Problem } from '../../ground/problem.ts'
import type { DimensionName } from '../quantities/dimensions.ts'
import { countWords } from '../quantities/quantities.ts'
import { takeQuantity } from '../quantities/quantity.ts'
import { oddNumberProblem, type Wanted } from '../scan/number.ts'
import { Scanner } from '../scan/scanner.ts'
import { takeCellVolts } from '../things/cell-volts.ts'
import { takeCharger } from '../things/charger.ts'
import { takeChemistry } from '../things/chemistry.ts'
import { takeLevelWords } from '../things/level-words.ts'
import { takePack } from '../things/pack.ts'
import { takeSource } from '../things/source.ts'
import { isDeterminer } from './filler-words.ts'

export interface Phrase {
  /** The kind of value, as the options of commands name it. */
  readonly kind: string
  /** As typed. */
  readonly text: string
  /** The preposition before it, where there is one: "from", "to", "on", … */
  readonly cue?: string
  /** The word behind it, in lower case. */
  readonly next?: string
  /** Right behind a pack, with no word between. */
  readonly afterPack?: true
  /** A source that is written as a pack. */
  readonly pack?: true
}

export interface Sentence {
  readonly phrases: readonly Phrase[]
  /** The other words, in lower case. */
  readonly words: readonly string[]
}

const cues = new Set(
  'from to at on with until till by using off out for is in shows says reads measures'.split(' '),
)
const levelCues = new Set(['from', 'to', 'at', 'until', 'till', 'is', 'shows', 'says', 'reads', 'measures'])
const quantity = (dimension: DimensionName) => (scan: Scanner) => takeQuantity(scan, dimension) !== undefined
const pattern = (regex: RegExp) => (scan: Scanner) => scan.take(regex) !== undefined
const wholePack = String.raw`\d+ ?s(?:\d+p)? \d+(?:[.,]\d+)?(?: ?m?ah)?(?= |$)`
const count = new RegExp(
  String.raw`(?:\d{1,3}|${countWords.join('|')})(?: ?x(?![\p{L}\d])|(?= (?:of|packs?|batter(?:y|ies)|more)(?!\p{L}))|(?= ${wholePack}))` +
    String.raw`|(?:1?\d|${countWords.join('|')})(?= \d+ ?(?:s|mah)(?![\p{L}\d]))`,
  'iuy',
)
const temperature =
  /[+-]?\d+(?:[.,]\d+)? ?(?:° ?[cf]?|deg(?:rees?)?(?: ?[cf])?|celsius|fahrenheit|f)(?![\p{L}\d])/iuy
const duration =
  /\d+(?:[.,]\d+)? ?(?:h ?\d{1,2}(?!\d)(?: ?min)?|hours?|hrs?|h|min(?:ute)?s?|sec(?:ond)?s?)(?![\p{L}\d])/iuy
const drop = /\d+(?:[.,]\d+)? ?(?:%|percent|m?v)(?= (?:voltage )?(?:drop|loss))/iuy
/** The cutoffs that a charger offers: `4.20/4.35V`. */
const cutoffs = /[2-4][.,]\d{1,3}(?: ?\/ ?[2-4][.,]\d{1,3})+ ?v(?:olts?)?(?: per cell)?(?![\p{L}\d])/iuy
/** Resistances cell by cell: `5 5 6 5 mΩ`. */
const resistances =
  /\d+(?:[.,]\d+)?(?:(?: |, | ?\/ ?)\d+(?:[.,]\d+)?){1,13} ?(?:m ?Ω|m ?ohms?|milliohms?)(?!\p{L})/iuy
/** A number that can only be the volts of a cell. */
const bareCell = /[234][.,]\d{1,3}(?=[ ;?!]|, |$)/y
/** Cells in series and nothing more: a pack of which the rest was not said. */
const series = /(?:1[0-4]|[1-9]) ?s(?![\p{L}\d])/iuy
const gauge = /(?:awg ?\d{1,2}|\d{1,2} ?awg)(?![\p{L}\d])/iuy
const rate = /(?:\d+(?:[.,]\d+)? ?c|c ?\/ ?\d{1,3})(?![\p{L}\d])/iuy

/** Tried in this order: what has more parts first. */
const nouns: readonly (readonly [string, (scan: Scanner) => boolean])[] = [
  ['temperature', pattern(temperature)],
  ['duration', pattern(duration)],
  ['gauge', pattern(gauge)],
  ['drop', pattern(drop)],
  ['cutoffs', pattern(cutoffs)],
  ['resistance', pattern(resistances)],
  ['source', takeSource],
  ['count', pattern(count)],
  ['cells', scan => takePack(scan) === 'cells'],
  ['pack', scan => takePack(scan) !== undefined],
  ['chemistry', scan => takeChemistry(scan) !== undefined],
  ['charger', takeCharger],
  ['current', quantity('current')],
  ['current', pattern(rate)],
  ['resistance', quantity('resistance')],
  ['energy', quantity('energy')],
  ['power', quantity('power')],
  ['capacity', quantity('capacity')],
  ['length', quantity('length')],
  ['mass', quantity('mass')],
  ['voltage', quantity('voltage')],
  ['percent', quantity('share')],
  ['series', pattern(series)],
  ['voltage', pattern(bareCell)],
]

/** No command has so many options; the limit also bounds the work that a sentence can ask for. */
const mostPhrases = 20
export const nounKinds: readonly string[] = ['level', 'cell volts', ...nouns.map(([kind]) => kind)]

/** Throws a Problem for a number that belongs to nothing: it is never dropped in silence. */
export function phrasesOf(text: string): Sentence {
  const scan = new Scanner(text.replace(/(?<=^| )@ ?(?=\d)/g, 'at '))
  const phrases: Phrase[] = []
  const words: string[] = []
  let cue: string | undefined
  let behindPack = false
  for (skip(scan); !scan.done; skip(scan)) {
    const start = scan.at
    const kind = kindHere(scan, cue)
    if (kind !== undefined) {
      if (phrases.length === mostPhrases) throw tooMuch(scan.text.slice(start, scan.at))
      const next = /[\p{L}']+/u.exec(scan.text.slice(scan.at, scan.at + 40))?.[0].toLowerCase()
      phrases.push({
        kind,
        text: scan.text.slice(start, scan.at),
        cue,
        next,
        ...(behindPack && { afterPack: true as const }),
      })
      cue = undefined
      behindPack = kind === 'pack' || kind === 'cells'
      continue
    }
    const word = takeWord(scan)
    behindPack = false
    if (cues.has(word)) cue = word
    else if (!isDeterminer(word)) cue = undefined
    words.push(word)
  }
  return { phrases, words }
}

function kindHere(scan: Scanner, cue: string | undefined): string | undefined {
  // "at 3C" is what somebody wants to set, never what the label behind it allows.
  if (cue === 'at' && scan.take(rate)) return 'current'
  if (takeCellVolts(scan)) return 'cell volts'
  // Volts and percentages are a pack's state only behind a preposition.
  if (cue !== undefined && levelCues.has(cue) && takeLevelWords(scan)) return 'level'
  let misfit: unknown
  for (const [kind, take] of nouns) {
    try {
      if (scan.attempt(() => take(scan) || undefined)) return kind
    } catch (problem) {
      // Out of the range of one noun it may still be another; only where it is none is the first to complain.
      misfit ??= problem
    }
  }
  if (misfit !== undefined) throw misfit
  return undefined
}

function tooMuch(text: string): Problem {
  return new Problem({
    what: 'That holds more values than one question needs.',
    token: shortened(text),
    expected: `at most ${mostPhrases} packs, chargers, sources and quantities`,
    example: 'how long for 3S 720 LiHV at 1A from 3.7V',
  })
}

function skip(scan: Scanner): void {
  scan.take(/(?:[^\p{L}\d.,+°%Ω<>-]|[.,+-](?!\d))+/uy)
}

function takeWord(scan: Scanner): string {
  const word = scan.take(/[+-]?\d+(?:[.,]\d+)+|[^ ,;:?!()]+/y)?.[0] ?? scan.take(/./suy)?.[0] ?? ''
  if (!/^[+-]?[.,]?\d/.test(word)) return word.toLowerCase()
  const wanted: Wanted = {
    expected: ({ say }) =>
      say`each number with its unit, so that I see what it belongs to (A, V, mAh, %, °C, S)`,
    example: 'how long for 3S 720 LiHV at 1A from 3.7V',
  }
  throw (
    oddNumberProblem(word, wanted) ??
    new Problem({ what: `I cannot place "${shortened(word)}".`, token: shortened(word), ...wanted })
  )
}
