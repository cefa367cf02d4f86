// Takes back the last charge noted of a saved pack.

import { required, service } from '../../src/assistant/command.ts'
import { packNameKind } from '../../src/assistant/kit/kit-name.ts'
import { loggedPack } from './logged-pack.ts'
import { onlyModeratorsUndo } from './problems.words.ts'

export const logUndo = service({
  name: 'log undo',
  takes: { name: required(packNameKind) },
  examples: ['log undo name: wren'],
  changes: true,
  run: async ({ name }, context) => {
    const { asker, memory } = context
    const { entry } = await loggedPack(name, context)
    if (entry.owner.scope === 'community' && !asker.moderates) throw onlyModeratorsUndo(name)
    return { gone: await memory.log.removeLast(entry.owner, name) }
  },
})
