// Cells whose type nobody named, but the volts that their charge ends at: "how do I set 1S 4.35".

import { chemistries, liFe, lihv } from '../../../charging/things/chemistries.ts'
import type { Candidate } from '../../candidates/sentence/candidate.ts'
import { highestCell_V } from '../../parts/level-words.ts'
import { toldBy } from './told-pack.ts'

const sets = /\b(?:set|setting|settings|program\w*|mode|cut-?off|cut off|ends?|ending|stops?|full at|terminat\w*)\b/i
/** What somebody read off a pack, or did to one, is no setting; nor is what leave is asked for. */
const isElse =
  /\b(?:reads?|reading|measur\w*|shows?|showing|meter|checker|rests?|resting|sits|stands|says|came|went|was|were|got|after|now|too high|over|charged|charge (?:\w+ )*(?:to|until|till|up to)|can|may|ok|safe)\b/i
/** So near to where its charge ends a figure names a type; LiFe chargers stop at 3.60 V or 3.65 V. */
const near_V: Readonly<Record<string, number>> = { [lihv.name]: 0.011, [liFe.name]: 0.056 }
const isVolts = ({ kind, text }: Candidate): boolean =>
  (kind === 'state' || kind === 'voltage') && /^[\d.]+V/.test(text)

/** Where it stands, or is wanted to go whatever it is. */
const stands: ReadonlySet<string> = new Set(['at', 'from', 'down', 'to', 'is', 'on'])

const endsAt = /\b(?:ends?|stops?|full) at\W*$/i

/** The values with the type that such volts name as the likeliest of the pack: it ends there, and is not told to be one. */
export function withCutoffType(text: string, values: readonly Candidate[]): readonly Candidate[] {
  const told = values.flatMap(value => toldBy(value) ?? [])
  const [cells, ...others] = values.filter(({ pack }) => pack?.series !== undefined)
  const [end, ...more] = values.filter(isVolts)
  const isOne = cells !== undefined && others.length === 0 && told.every(({ chemistry }) => chemistry === undefined)
  if (
    !isOne ||
    !cells.pack ||
    !end ||
    (stands.has(end.cue ?? '') && !endsAt.test(text.slice(0, end.start))) ||
    more.length > 0 ||
    !sets.test(text) ||
    isElse.test(text)
  )
    return values
  const volts = Number.parseFloat(end.text)
  const perCell_V = volts > highestCell_V ? volts / (cells.pack.series ?? 1) : volts
  const named = chemistries.find(
    ({ name, full_V }) => Math.abs(full_V.value - perCell_V) <= (near_V[name] ?? Number.NEGATIVE_INFINITY),
  )
  if (!named) return values
  return values.map(value => {
    if (value === end) return { ...value, kind: 'number', text: '' }
    return value === cells ? { ...value, pack: { ...cells.pack, likely: named.name } } : value
  })
}
