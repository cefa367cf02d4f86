// Takes back the asker's own last change, for ten minutes.

import { service } from '../../src/assistant/command.ts'
import { undoable_ms } from '../../src/memory/retention.ts'
import { takeBack } from './take-back.ts'
import { onlyModeratorsUndo } from './undo-problems.words.ts'

export const undo = service({
  name: 'undo',
  takes: {},
  examples: ['undo'],
  changes: true,
  /** The last change, and whether it is taken back: it is not where it is too old. */
  run: async (_, context) => {
    const { memory, asker, community, now = new Date() } = context
    const last = await memory.history.lastOf(asker.id, community.id)
    const isTooOld = last !== undefined && now.getTime() - last.at.getTime() > undoable_ms
    if (!last || isTooOld) return { last, isTooOld }
    // Who moderates no longer changes nothing any longer.
    if (last.scope === 'community' && !asker.moderates) throw onlyModeratorsUndo
    await takeBack(last, context)
    return { last, isTooOld }
  },
})
