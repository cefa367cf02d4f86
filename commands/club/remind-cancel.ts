// Cancels the asker's reminders: those of one code, or all.

import { defineCommand, optional } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { shortened } from '../../src/ground/plain-text.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'

const codeKind: ValueKind<string> = {
  name: 'code',
  example: 'k7f3',
  read: text => {
    const code = text.trim().toLowerCase()
    if (/^[a-z2-9]{4}$/.test(code)) return { value: code, assumed: [] }
    throw new Problem({
      what: 'That is no code of a reminder.',
      token: shortened(text),
      expected: 'four letters and digits, as "remind list" shows them',
      example: 'remind list',
    })
  },
  write: code => code,
  complete: () => [],
}

export const remindCancel = defineCommand({
  name: 'remind cancel',
  summary: 'Cancels your reminders: those of one code, or all.',
  options: {
    code: optional(codeKind, { description: 'as "remind list" shows it; all of them when not said' }),
  },
  examples: ['remind cancel', 'remind cancel code: k7f3'],
  changes: true,
  answer: async ({ code }, { asker, memory }) => {
    const count = await memory.reminders.cancel(asker.id, code)
    return {
      headline:
        count > 0
          ? `Cancelled: ${count === 1 ? 'one reminder' : `${count} reminders`}.`
          : 'There was nothing to cancel.',
      cautions: [generalCaution],
    }
  },
})
