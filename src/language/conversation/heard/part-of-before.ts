// So many times what was told before: "half the amps", "twice the length", "a third of that".

import type { Candidate } from '../../candidates/index.ts'
import type { Frame } from '../../frames/frame.ts'
import { conceptsOf } from '../../model/concepts.ts'
import { writeQuantity } from '../../quantities/quantity.ts'

const factors: Readonly<Record<string, number>> = {
  half: 1 / 2,
  third: 1 / 3,
  quarter: 1 / 4,
  twice: 2,
  double: 2,
  triple: 3,
}
const relative = new RegExp(
  String.raw`\b(?:an? |one )?(${Object.keys(factors).join('|')})(?: of)?(?: (?:the|its?|my))? (that|this|it|as much|speed|rate|power|length|distance|amps?|amperes?|current|watts?)\b`,
  'i',
)
const leading = /^\d+(?:\.\d+)?/

/** Whoever has time may charge at half the usual. */
const gently =
  /\b(?:(?:no|not in an?y?) (?:hurry|rush)|(?:plenty|lots|loads) of time|(?:all|whole) (?:day|evening|afternoon|morning)|gentl(?:e|er|y)|(?:go|take it) (?:easy|slow(?:er|ly)?))\b/i

/** Whoever has none may double it. */
const faster = /\b(?:go|charge|charged|be|be done|any|it|them) (?:faster|quicker)\b/i

const partIn = (text: string, values: readonly Candidate[]): RegExpExecArray | null =>
  relative.exec(text) ??
  (values.every(({ text: of }) => of === 'full') ? (gently.exec(text) ?? faster.exec(text)) : null)

/** Nothing but what was said before tells how much it is. */
export const isPartOfBefore = (text: string, values: readonly Candidate[]): boolean => partIn(text, values) !== null

/** With it in the place of the words for it; of the quantity that they name, or of the only one that was told. */
export function withPartOfBefore(
  text: string,
  values: readonly Candidate[],
  { question: { options }, figures = [] }: Frame,
): readonly Candidate[] {
  const found = partIn(text, values)
  if (!found) return values
  const [typed, named = faster.test(text) ? 'double' : 'half', of = ''] = found
  const current = options.current ?? options.discharge
  const isPower =
    conceptsOf(of).includes('watts') || of === 'power' || (current === undefined && options.power !== undefined)
  const kind = /length|distance/i.test(of) ? 'length' : isPower ? 'power' : 'current'
  const said = figures.find(({ key }) => kind === 'current' && key === 'setCurrent')?.value
  const whole = (kind === 'current' ? current : options[kind]) ?? (said && writeQuantity(said, kind))
  const [start, end] = [found.index, found.index + typed.length]
  const part = (number: string) => `${Number((Number(number) * (factors[named.toLowerCase()] ?? 1)).toFixed(3))}`
  const others = values.filter(value => value.end <= start || value.start >= end)
  return whole
    ? [...others, { kind, text: whole.replace(leading, part), start, end, typed, score: 1, cue: 'at' }]
    : others
}
