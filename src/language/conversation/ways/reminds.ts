// "Give me a shout when it's done": a reminder for the charge that was spoken of.

import { fitTo } from '../../reading/fit.ts'
import { writeQuestion } from '../../sentence/question.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'
import { isOfPack, lentTo } from '../behind/lend.ts'
import { asksReminder } from '../heard/asks-reminder.ts'

export const reminds: Way = ({ text, values, frame, vocabulary }) => {
  const [command, time] = ['remind me', 'time'].map(name => vocabulary.find(one => one.name === name))
  if (!command || !time || frame.pending || !asksReminder(text) || !isOfPack(values)) return undefined
  const { kept, before } = lentTo(frame, time, text, [])
  const { options, missing } = fitTo(time, [], kept, before)
  if (missing !== undefined) return undefined
  const charge = { for: writeQuestion({ command: time.name, options }) }
  return choiceOf(fitTo(command, [], charge), charge)
}
