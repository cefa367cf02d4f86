// Deletes everything that is kept about the asker, once they have confirmed it.

import { defineCommand, optional } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import { memberLines } from './member-lines.ts'

export const forgetMe = defineCommand({
  name: 'forget me',
  summary: 'Deletes everything I keep about you, once you confirm it.',
  options: {
    confirm: optional(choiceKind('confirmation', ['forget'], 'That is not the word that confirms it.'), {
      description: 'the word forget; without it I only say what would go',
    }),
  },
  examples: ['forget me'],
  changes: true,
  answer: async ({ confirm }, { asker, memory }) => {
    const data = await memory.members.export(asker.id)
    if (confirm) await memory.members.forget(asker.id)
    return {
      headline: confirm
        ? 'I have deleted everything that I kept about you.'
        : 'This would delete everything that I keep about you. To do it, write: forget me confirm: forget',
      working: [
        ...memberLines(data),
        'Messages in the chat stay where they are, and so does what the club shares.',
        'Where this question is a message, a note that it was answered stays for 90 days, so that it is not carried out twice.',
        'A backup that the host made earlier may still hold it until that backup is thrown away.',
      ],
      cautions: [generalCaution],
    }
  },
})
