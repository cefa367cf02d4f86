// Cancels the asker's reminders: those of one code, or all.

import { optional, service } from '../../src/assistant/command.ts'
import { shortened } from '../../src/ground/plain-text.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { cancelsAll, noCode, noCodeExpected } from './reminder-problems.words.ts'

const codeKind: ValueKind<string> = {
  name: 'code',
  example: 'k7f3',
  read: text => {
    const code = text.trim().toLowerCase()
    if (/^[a-z2-9]{4}$/.test(code)) return { value: code, assumed: [] }
    throw new Problem({ what: noCode, token: shortened(text), expected: noCodeExpected, example: 'remind list' })
  },
  write: code => code,
  complete: () => [],
}

export const remindCancel = service({
  name: 'remind cancel',
  takes: { code: optional(codeKind) },
  examples: ['remind cancel', 'remind cancel code: k7f3'],
  changes: true,
  confirm: async ({ code }, { asker, memory }) => {
    const codes = new Set((await memory.reminders.of(asker.id)).map(reminder => reminder.code))
    return code === undefined && codes.size > 1 ? cancelsAll(codes.size) : undefined
  },
  run: async ({ code }, { asker, memory }) => ({ cancelled: await memory.reminders.cancel(asker.id, code) }),
})
