// Takes back the last charge noted of a saved pack.

import { packNameKind } from '../../src/assistant/kit/kit-name.ts'
import { defineCommand, required } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { Problem } from '../../src/ground/problem.ts'
import { loggedPack } from './logged-pack.ts'

export const logUndo = defineCommand({
  name: 'log undo',
  summary: "Takes back the last charge noted of a saved pack; moderators that of the club's.",
  options: {
    name: required(packNameKind, {
      description: 'of the saved pack',
      phrase: text => `the last charge of ${text}`,
    }),
  },
  examples: ['log undo name: wren'],
  changes: true,
  answer: async ({ name }, context) => {
    const { asker, memory, show } = context
    const { entry } = await loggedPack(name, context)
    if (entry.owner.scope === 'community' && !asker.moderates) {
      throw new Problem({
        what: "Only moderators take back charges of the club's packs.",
        token: name,
        expected: 'a pack of your own, or ask a moderator',
        example: 'log show name: wren',
      })
    }
    const gone = await memory.log.removeLast(entry.owner, name)
    return {
      headline: gone
        ? `Taken back: the charge of ${gone.at.toISOString().slice(0, 10)} that put ${show.capacity(gone.charge_Ah)} into ${name}.`
        : `No charge of ${name} is noted, so nothing was changed.`,
      cautions: [generalCaution],
    }
  },
})
