// Volts above full behind a question about what a pack is charged to: "17.4?", "thinking 25.8". They are no supply's and no count.

import { attempt } from '../../../ground/problem.ts'
import { cellsKind } from '../../kinds/values.ts'
import { fitTo, type Kept } from '../../reading/fit.ts'
import { readPack } from '../../things/pack.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'

/** Whose answers name the volts to end at. */
const ofEnd: ReadonlySet<string> = new Set(['trim', 'current', 'time', 'percent'])
/** Further above full nobody means volts of these cells. */
const most = 1.2
const number = /^(\d+(?:\.\d+)?) ?(v(?:olts?)?)?$/i

export const beyondFull: Way = ({ values, frame, vocabulary }) => {
  const command = vocabulary.find(({ name }) => name === 'trim')
  const { pack: told, chemistry: cells, at: _, to: __, ...others } = frame.question.options
  const [value, ...more] = values
  const [, typed = '', unit = ''] = number.exec(value?.typed.replace(',', '.') ?? '') ?? []
  // A bare number may stand for another one that was told.
  const isOpen = unit === '' && Object.keys(others).length > 0
  if (!command || frame.pending || !ofEnd.has(frame.question.command) || typed === '' || isOpen || more.length > 0)
    return undefined
  const pack = attempt(() => readPack(told ?? '').value) ?? attempt(() => cellsKind.read(cells ?? '', {}).value)
  const { series = 1, chemistry } = pack ?? {}
  if (!chemistry) return undefined
  const isBeyond = (perCell_V: number) =>
    perCell_V > chemistry.full_V.value + 0.005 && perCell_V < most * chemistry.full_V.value
  const isOfCell = isBeyond(Number(typed))
  if (!isOfCell && !isBeyond(Number(typed) / series)) return undefined
  const kept: Kept = told === undefined ? { chemistry: cells ?? '' } : { pack: told }
  return choiceOf(fitTo(command, [], { ...kept, to: `${typed}V ${isOfCell ? 'per cell' : 'pack'}` }), kept)
}
