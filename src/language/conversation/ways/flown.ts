// How long a pack flies at what is drawn from it: no charge, whatever was asked before.

import { fitTo } from '../../reading/fit.ts'
import { asksFlightTime } from '../../reading/signs/flight.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'
import { lentTo } from '../behind/lend.ts'

/** "It draws 18 A hovering, what timer", of the pack that was spoken of. */
export const flown: Way = ({ text, values, frame, vocabulary }) => {
  const command = vocabulary.find(({ name }) => name === 'energy')
  if (!command || frame.pending || !asksFlightTime(text, values)) return undefined
  const { kept, before } = lentTo(frame, command, text, values)
  const { current: _, from: __, to: ___, source: ____, ...held } = kept
  const fitted = fitTo(command, values, held, before)
  return fitted.missing === undefined && fitted.left.length === 0 ? choiceOf(fitted, held) : undefined
}
