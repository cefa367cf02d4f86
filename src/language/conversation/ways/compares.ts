// "Or is the 6S 1300 quicker": another pack, charged as the one that was spoken of.

import { attempt } from '../../../ground/problem.ts'
import type { Candidate, ValueName } from '../../candidates/index.ts'
import { fitTo, type Kept } from '../../reading/fit.ts'
import { namesPack, toldBy } from '../../reading/told/told-pack.ts'
import { readPack } from '../../things/pack.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'
import { heldOn } from '../behind/lend.ts'

/** It wonders which of two takes longer. */
export const comparesTimes = (text: string): boolean => quicker.test(text) && !/\bno longer\b/i.test(text)
const quicker =
  /\b(?:quick|fast|soon|slow|long)er\b|\b(?:half|twice|double|a third|a quarter) (?:of )?(?:the |as )?(?:time|long)\b|\b(?:less|more|(?<!\bat the )same) time\b/i

const timed: ReadonlySet<string> = new Set(['current', 'time'])
const setting: ReadonlySet<ValueName> = new Set(['current', 'rate', 'chemistry'])

export const compares: Way = ({ text, values, frame, vocabulary }, { name }) => {
  const { pack: before } = frame.question.options
  const command = vocabulary.find(one => one.name === 'time')
  const told = values.filter(value => toldBy(value) !== undefined)
  if (!command || frame.pending || before === undefined || !timed.has(name) || !comparesTimes(text)) return undefined
  if (told.filter(namesPack).length !== 1 && told.length !== 1) return undefined
  const own = values.filter(value => told.includes(value) || setting.has(value.kind) || isStart(value))
  const lent = heldOn(frame, own)
  const kept = likewise(lent.kept, before)
  const fitted = fitTo(command, own, kept, lent.before)
  return fitted.missing === undefined ? choiceOf(fitted, kept) : undefined
}

const isStart = ({ kind, cue }: Candidate): boolean => kind === 'state' && (cue === 'from' || cue === 'at')

/** What is 1C of one pack is told of the other as its own 1C; volts of a whole pack are those of one pack alone. */
function likewise({ current, from, ...others }: Kept, pack: string): Kept {
  const isUsual = attempt(() => Number.parseFloat(current ?? '') === readPack(pack).value.capacity_Ah)
  const isOfCells = from !== undefined && !from.endsWith('pack')
  const kept: Record<string, string> = { ...others }
  if (current !== undefined && !isUsual) kept.current = current
  if (isOfCells) kept.from = from
  return kept
}
