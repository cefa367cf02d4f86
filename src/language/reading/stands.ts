// Where a pack stands, told beside a question in words ("shows 11.9 V on the 3S, what now"): that is judged first.

import { chemistries, chemistryNamed } from '../../charging/things/chemistries.ts'
import { bestCover, candidatesOf } from '../candidates/index.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Vocabulary } from '../sentence/vocabulary.ts'
import { type Fitted, fitTo } from './fit.ts'
import { commonest } from './told/told-pack.ts'

/** The command that judges where a pack stands. */
const judging = 'percent'

/** Words before volts that say that something stands there now, and not where it is to go. */
const standsBefore =
  /\b(?:shows?|showing|reads?|reading|says?|said|is|are|was|sits?|rests?|stands?|stays?|landed|after|now|measure[sd]?|total|altogether|whole (?:pack|battery)|stop(?:s|ped)|ended)(?: (?:me|only|just|still|at|about|around|now|down|a))*\W*$/i

/** Who wants to know how things are in general tells of no pack. */
const asksInGeneral =
  /\b(?:why|how come|what (?:if|happens|does)|what(?:'?s| is| are) (?:a|the|all)|difference|explain|set|limit|alarm|cutoff|storage|throttle|under load|stop)\b/i

const ofPack = /\b(?:packs?|batter(?:y|ies)|akkus?|cells?|li\w+|it|its|mine|they)\b[^.,;:?!\d]{0,25}$/i
const charged = /\bcharg(?:e|ed|ing)\b/i
const toBeCharged = /\bcharg(?:e|ing)\b[^.,;:?!\d]{0,25}$/i
const ofAir =
  /\b(?:(?<!\b(?:com(?:e|es|ing)|came|are|take|took|taken|get|got) )out|outside|outdoors|air|shade|weather|room|inside)\b/i

/** How warm cells are that somebody wants to charge: "can I charge at 2 degrees", "when it is 1 degree outside". */
export function warmthToCharge(text: string): string | undefined {
  const told = bestCover(candidatesOf(text)).find(({ kind }) => kind === 'temperature')
  const before = text.slice(0, told?.start)
  return told && (toBeCharged.test(before) || (ofPack.test(before) && charged.test(text))) ? told.text : undefined
}

/** How warm the pack is, beside a question in words; undefined where nothing or more than one thing was told. */
export function warmthTold(text: string, values: readonly Candidate[]): string | undefined {
  const [told, ...others] = values.filter(({ kind }) => kind === 'temperature')
  if (!told || others.length > 0 || asksInGeneral.test(text) || ofAir.test(text)) return undefined
  return [ofPack, toBeCharged].some(one => one.test(text.slice(0, told.start))) ? told.text : undefined
}

/** No cell bears less, whatever it holds. */
const bearsLeast_V = Math.min(...chemistries.map(({ damage_V }) => damage_V.value))
const ofDifference =
  /^\W*(?:a cell |per cell )?(?:apart|off|out|lower|higher|less|more|drift|differen|between|drop|under load)/i

/** Volts that leave every cell too low for any charge, of a whole pack or of cells that were not counted, as where they stand. */
function dead(text: string, values: readonly Candidate[]): Candidate | undefined {
  const { series, chemistry = commonest } = values.find(({ pack }) => pack?.series)?.pack ?? {}
  const bears_V = series === undefined ? bearsLeast_V : (chemistryNamed(chemistry)?.damage_V.value ?? 0) * series
  return values.flatMap(value => {
    const told_V = Number(volts.exec(value.text)?.[1] ?? Number.NaN)
    if (!(told_V < bears_V) || value.cue === 'by' || ofDifference.test(text.slice(value.end))) return []
    // Of a pack with a count, volts of one cell are where that stands.
    if (value.kind !== 'voltage' && !value.text.endsWith('pack')) return []
    return [{ ...value, kind: 'state' as const, text: `${told_V}V ${series === undefined ? 'per cell' : 'pack'}` }]
  })[0]
}
const volts = /^([\d.]+)V(?: pack)?$/

/**
 * What judges it; undefined where no pack is told to stand anywhere, or where it is not clear of which cells.
 * `isOpen`: nothing else answers it; else only what is past any charge is judged first.
 */
export function standsAt(
  text: string,
  found: readonly Candidate[],
  vocabulary: Vocabulary,
  isPlain: boolean,
  isOpen: boolean,
): Fitted | undefined {
  const command = vocabulary.find(({ name }) => name === judging)
  const past = dead(text, found)
  const values = found.map(value => (past && value.start === past.start ? past : value))
  const [told, ...others] = values.filter(({ kind, text }) => kind === 'state' && /\dV/.test(text))
  if (!command || !told || others.length > 0 || asksInGeneral.test(text)) return undefined
  if (told !== past && !isOpen) return undefined
  if (!isPlain && !standsBefore.test(text.slice(0, told.start))) return undefined
  const fitted = fitTo(command, values)
  return fitted.missing === undefined && fitted.options.at === told.text ? fitted : undefined
}
