// Commands as they answer where the words around a question tell of dangers, or leave doubts.

import type { Entry } from '../../src/assistant/command.ts'
import type { Danger } from '../../src/charging/situation/dangers.ts'
import type { Doubt } from '../../src/charging/situation/doubts.ts'

export interface ToldAround {
  readonly dangers: readonly Danger[]
  readonly doubts: readonly Doubt[]
}

/** `told` is looked at whenever one of them answers. */
export const under = (commands: readonly Entry[], told: () => ToldAround): readonly Entry[] =>
  commands.map(command => ({
    ...command,
    answer: (inputs, context) => {
      const { dangers, doubts } = told()
      const around = { dangers: [...context.dangers, ...dangers], doubts: [...context.doubts, ...doubts] }
      return command.answer(inputs, { ...context, ...around })
    },
  }))
