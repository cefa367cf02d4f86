// "Give me a shout when it's done": a reminder for the charge that was spoken of.

import { conceptsIn } from '../model/concepts.ts'
import { fitTo } from '../reading/fit.ts'
import { writeQuestion } from '../sentence/question.ts'
import type { Way } from './behind.ts'
import { choiceOf } from './choice-of.ts'
import { lentTo } from './lend.ts'

const whenDone =
  /\b(?:when|once|as soon as|after|if)\b.*\b(?:done|full|ready|over|finish\w*|complete\w*|charged|through|there|time)\b|\bthen\W*$/i
const tells =
  /\b(?:(?:tell|message|text|warn|call|notify|alert) me|let me know|give (?:me|us) a (?:shout|call|ping|nudge|buzz))\b/i

export const reminds: Way = ({ text, values, frame, vocabulary }) => {
  const [command, time] = ['remind me', 'time'].map(name => vocabulary.find(one => one.name === name))
  const isAsked = tells.test(text) || conceptsIn(text).includes('remind')
  // "Once" counts nothing.
  const isOfCharge = values.every(value => value.text === 'full' || value.text === '1') && whenDone.test(text)
  if (!command || !time || frame.pending || !isAsked || !isOfCharge) return undefined
  const { kept, before } = lentTo(frame, time, text, [])
  const { options, missing } = fitTo(time, [], kept, before)
  if (missing !== undefined) return undefined
  const charge = { for: writeQuestion({ command: time.name, options }) }
  return choiceOf(fitTo(command, [], charge), charge)
}
