// A number behind a question about a pack: a current by the word before it, volts that somebody read off the pack.

import { attempt } from '../../ground/problem.ts'
import { bestCover, type Candidate, candidatesOf, type ValueName } from '../candidates/index.ts'
import { type Frame, typedIn } from '../frames/frame.ts'
import type { Kept } from '../reading/fit.ts'
import { readPack } from '../things/pack.ts'

export const onlyNumber = /^\d+(?:[.,]\d+)?$/

/**
 * "With 3" is a current, and so is "at 2.6" behind "from 3.6 at 1.3a", where no sound cell of the pack stands at as many
 * volts.
 */
export function asCurrent(value: Candidate, frame: Frame): Candidate {
  const { current, pack: text = '' } = frame.question.options
  const { cue = '', kind, typed } = value
  const pack = attempt(() => readPack(text).value)
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
const mayBeCurrent: ReadonlySet<ValueName> = new Set(['current', 'state', 'number'])

const ofFeed = /\b(?:supply|source|psu|adapt[eo]r|brick|input|wall|car)\b/i
const reads = /\b(?:measured?|reads?|reading|shows?|showing|says|sits|stands|rests|landed)\b/i

/** "I measured 14.4 on it": volts that the pack which was spoken of may stand at. */
export function ofItsLevel(
  value: Candidate,
  text: string,
  { pack: before = '', source, voltage }: Kept,
): Candidate | undefined {
  const pack = attempt(() => readPack(before).value)
  const isVolts = value.kind === 'voltage' || (value.kind === 'number' && onlyNumber.test(value.typed))
  if (!pack || source !== undefined || voltage !== undefined || !isVolts || !reads.test(text) || ofFeed.test(text))
    return undefined
  const perCell_V = Number.parseFloat(value.text) / pack.series
  const { damage_V, full_V } = pack.chemistry
  return perCell_V >= damage_V.value && perCell_V <= full_V.value
    ? { ...value, kind: 'state', text: `${Number.parseFloat(value.text)}V pack`, cue: 'at' }
    : undefined
}
