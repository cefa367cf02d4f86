// What a charge put back, of the pack that was spoken of: "it took 1100", "1.4 Ah went in".

import { writeQuantity } from '../../quantities/quantity.ts'
import { fitTo } from '../../reading/fit.ts'
import { capacityTold_Ah, namesPack } from '../../reading/told/told-pack.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'
import { lentTo } from '../behind/lend.ts'

const tookIn =
  /\b(?:took|swallowed|accepted|(?:put|went|gone|goes|got|is|are) (?:\d+\W*\w* )?(?:back|in|into it)\b|(?:back|in) (?:it|so far|already))/i
const keeps = /\b(?:log|note|save|record|write|remember)\w*\b/i

export const putBack: Way = ({ text, values, frame, vocabulary }) => {
  const command = vocabulary.find(({ name }) => name === 'percent')
  const { pack } = frame.question.options
  if (!command || frame.pending || pack === undefined || values.some(namesPack) || !tookIn.test(text)) return undefined
  const [back, ...others] = values.map(capacityTold_Ah)
  if (back === undefined || others.length > 0 || keeps.test(text)) return undefined
  const { before } = lentTo(frame, command, text, values)
  return choiceOf(fitTo(command, [], { pack, back: writeQuantity(back, 'capacity') }, before), { pack })
}
