// Takes back the last charge noted of a saved pack.

import { required, service } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { packNameKind } from '../../src/assistant/kit/kit-name.ts'
import type { KitEntry } from '../../src/memory/kit.ts'
import { loggedPack } from './logged-pack.ts'
import { onlyModeratorsUndo, takesBack } from './problems.words.ts'

export const logUndo = service({
  name: 'log undo',
  takes: { name: required(packNameKind) },
  examples: ['log undo name: wren'],
  changes: true,
  confirm: async ({ name }, context) => {
    const { owner } = await changeable(name, context)
    const last = (await context.memory.log.of(owner, name)).at(-1)
    return last && takesBack(last)
  },
  run: async ({ name }, context) => {
    const { owner } = await changeable(name, context)
    return { gone: await context.memory.log.removeLast(owner, name) }
  },
})

/** Throws a Problem where the pack is the club's and the asker does not moderate. */
async function changeable(name: string, context: Context): Promise<KitEntry> {
  const { entry } = await loggedPack(name, context)
  if (entry.owner.scope === 'community' && !context.asker.moderates) throw onlyModeratorsUndo(name)
  return entry
}
