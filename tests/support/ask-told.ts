// Questions asked of an assistant of their own, to whom dangers were told around them.

import { expect } from 'vitest'
import { commands } from '../../commands/index.ts'
import type { Reply } from '../../src/assistant/reply.ts'
import { askingOf } from './ask.ts'
import { type ToldAround, under } from './under.ts'

const nothingTold: ToldAround = { dangers: [], doubts: [] }

export async function askTold() {
  let told = nothingTold
  const asking = await askingOf(under(commands, () => told))
  return {
    /** Asked with nothing told around it, and perhaps not understood. */
    said: async (question: string): Promise<Reply> => {
      told = nothingTold
      return asking.ask(question)
    },
    /** Asked and understood. */
    ask: async (question: string, around = nothingTold): Promise<Reply> => {
      told = around
      const reply = await asking.ask(question)
      expect(asking.faults).toEqual([])
      expect(reply.problem, question).toBeUndefined()
      return reply
    },
  }
}

export const keys = ({ cautions }: Reply): readonly string[] => cautions.map(({ key }) => key)
