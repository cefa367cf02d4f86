// A number behind a question about a pack: a current by the word before it, volts that somebody read off the pack.

import { attempt } from '../../../ground/problem.ts'
import { bestCover, type Candidate, candidatesOf, type ValueName } from '../../candidates/index.ts'
import { type Frame, typedIn } from '../../frames/frame.ts'
import { isLeadResting } from '../../parts/source-draft.ts'
import type { Kept } from '../../reading/fit.ts'
import { readPack } from '../../things/pack.ts'
import { isOnlyValues } from './follow-up.ts'

export const onlyNumber = /^\d+(?:[.,]\d+)?$/

/**
 * "With 3" is a current, and so is "at 2.6" behind "from 3.6 at 1.3a", where no sound cell of the pack stands at as many
 * volts.
 */
export function asCurrent(value: Candidate, frame: Frame, asked: string): Candidate {
  const { current, pack: text = '' } = frame.question.options
  const { cue = '', kind, typed } = value
  const pack = attempt(() => readPack(text).value)
  // "10 A": of the charge that was told its own, and no charger's.
  if (current !== undefined && kind === 'current' && cue === '') return { ...value, cue: 'at' }
  if (mayBeAsked.has(kind) && isAskedAmps(asked, typed, frame)) return { ...value, kind: 'current', text: `${typed}A` }
  if (current === undefined || !pack || !onlyNumber.test(typed) || !mayBeCurrent.has(kind)) return value
  const amount = typed.replace(',', '.')
  const { precharge_V, full_V } = pack.chemistry
  const isLevel = Number(amount) >= precharge_V.value && Number(amount) <= full_V.value
  const tellsLevels = () =>
    bestCover(candidatesOf(typedIn(frame))).some(one => one.kind === 'state' && one.cue === 'at')
  const isCurrent = cue === 'with' || (cue === 'at' && !isLevel && !tellsLevels())
  const { pack: _, parts: __, ...others } = value
  return isCurrent ? { ...others, kind: 'current', text: `${amount}A`, typed: `${typed} A` } : value
}
/** "Can I do 2", "is 3 ok?" behind an answer that named amps: so many, unless they lie far from those. */
function isAskedAmps(text: string, typed: string, { question, figures = [] }: Frame): boolean {
  const advised_A = figures.find(({ key }) => key === 'setCurrent')?.value
  const isOpen = advised_A !== undefined && question.options.pack !== undefined && mayI.test(text)
  return isOpen && onlyNumber.test(typed) && Math.abs(Math.log(Number(typed) / advised_A)) <= Math.log(near)
}
const mayI =
  /^\W*(?:(?:and|so|but|ok) )*(?:can|could|may|is|would|will)\b(?!.*\b(?:of|packs?|lipos?|them|those|these)\b)/i
const near = 4
const mayBeAsked: ReadonlySet<ValueName> = new Set(['number', 'count'])
const mayBeCurrent: ReadonlySet<ValueName> = new Set(['current', 'state', 'number'])

const ofFeed = /\b(?:supply|source|psu|adapt[eo]r|brick|input|wall|car)\b/i
const reads =
  /\b(?:(?:it|that)(?:'?s| is| sat) at|measured?|reads?|reading|shows?|showing|says|sits|stands|rests|landed|meter|checker|tester|only|now|still|down to)\b/i

const isVolts = ({ kind, typed, text }: Candidate): boolean =>
  kind === 'voltage' ||
  (kind === 'number' && onlyNumber.test(typed)) ||
  (kind === 'state' && /^[\d.]+V pack$/.test(text))

/** Whether a text says where something stands: by a word, or by the volts alone. */
const tellsVolts = (text: string, value: Candidate): boolean => reads.test(text) || isOnlyValues(text, [value])

/** "I measured 14.4 on it", "15.2 V": volts that the pack which was spoken of may stand at, and what feeds it may not. */
export function ofItsLevel(
  value: Candidate,
  text: string,
  { pack: before = '', source, voltage }: Kept,
): Candidate | undefined {
  const pack = attempt(() => readPack(before).value)
  const isOfSource =
    source !== undefined && (/\dV\b/.test(source) || !value.text.includes('.') || isOfLead(value, source))
  if (!pack || isOfSource || voltage !== undefined || !isVolts(value)) return undefined
  if (value.kind === 'state' || !tellsVolts(text, value) || ofFeed.test(text)) return undefined
  const perCell_V = Number.parseFloat(value.text) / pack.series
  const { damage_V, full_V } = pack.chemistry
  return perCell_V >= damage_V.value && perCell_V <= full_V.value
    ? { ...value, kind: 'state', text: `${Number.parseFloat(value.text)}V pack`, cue: 'at' }
    : undefined
}

const isOfLead = ({ text }: Candidate, source: string): boolean => isLeadResting(source, Number.parseFloat(text))

/** "Only 12.1 on the meter" behind a lead battery: where that rests. */
export function ofItsRest(value: Candidate, text: string, { source, from }: Kept): Candidate | undefined {
  const isTold = source !== undefined && isVolts(value) && value.text.includes('.') && isOfLead(value, source)
  if (!isTold || from?.endsWith('V pack') || !(/ rest /.test(source) || tellsVolts(text, value))) return undefined
  const others = source.replace(/ rest [\d.]+V/, '')
  return { ...value, kind: 'source', text: `${others} rest ${Number.parseFloat(value.text)}V` }
}
