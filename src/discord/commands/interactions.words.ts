// What is said of a button or an option that leads nowhere.

import type { Locale } from '../../ground/locale.ts'
import { Problem } from '../../ground/problem.ts'
import type { Text } from '../../ground/text.ts'

export const earlierButton = ({ say }: Locale): Text => say`a button under an earlier answer`

export const noQuestionBehind = new Problem({
  what: ({ say }) => say`I cannot find the question behind this button.`,
  expected: ({ say }) => say`the question, asked anew`,
  example: 'help',
})

export const privateQuestion = ({ say }: Locale): Text => say`a question whose answer only you would see`

/** `option` is what asks for such an answer. */
export const onlyModerators = (option: string): Problem =>
  new Problem({
    what: ({ say }) => say`Here only moderators may have an answer that only they see.`,
    token: option,
    expected: ({ say, own }) => say`the question without "${own(option)}", or asked in a direct message to me`,
    example: `${option}: False`,
  })

export const thatMessage = ({ say }: Locale): Text => say`that message`

export const noWords = new Problem({
  what: ({ say }) => say`There are no words in that message that I could answer.`,
  expected: ({ say }) => say`a message with a question in it`,
  example: 'current pack: 3S 720 LiHV',
})
