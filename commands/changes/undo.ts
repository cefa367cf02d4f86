// Takes back the asker's own last change, for ten minutes.

import { titleKind } from '../../src/assistant/cards/title.ts'
import { type Asked, optional, service } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import type { NotedChange } from '../../src/memory/memory.ts'
import { undoable_ms } from '../../src/memory/retention.ts'
import { matters, ofMatter } from './history.ts'
import { takeBack } from './take-back.ts'
import { onlyModeratorsUndo, takesBack } from './undo-problems.words.ts'

const changedKind: ValueKind<string> = { ...titleKind, name: 'changed' }
const takes = { about: optional(choiceKind('matter', matters)), of: optional(changedKind) }

export const undo = service({
  name: 'undo',
  takes,
  examples: ['undo', 'undo about: rules'],
  changes: true,
  /** Where something else was spoken of in between it may not be what is meant. */
  confirm: async (asked, context, isNext) => {
    const { last, isTooOld } = await lastOf(asked, context)
    return last && !isTooOld && !isNext ? takesBack(last.change) : undefined
  },
  /** The last change, and whether it is taken back: it is not where it is too old. */
  run: async (asked, context) => {
    const { last, isTooOld } = await lastOf(asked, context)
    if (last && !isTooOld) await takeBack(last, context)
    return { last, isTooOld }
  },
})

/** What the changed thing is called, and was. */
const namesOf = ({ change }: NotedChange): readonly string[] =>
  change.of === 'rules'
    ? []
    : [change.before, change.after].flatMap(one => (one ? ('title' in one ? one.title : one.name).toLowerCase() : []))

async function lastOf({ about, of }: Asked<typeof takes>, { memory, asker, community, now = new Date() }: Context) {
  const [last] = (await memory.history.changesOf(asker.id, community.id)).filter(
    noted => ofMatter(about)(noted) && (of === undefined || namesOf(noted).includes(of.toLowerCase())),
  )
  const isTooOld = last !== undefined && now.getTime() - last.at.getTime() > undoable_ms
  // Who moderates no longer changes nothing any longer.
  if (last?.scope === 'community' && !isTooOld && !asker.moderates) throw onlyModeratorsUndo
  return { last, isTooOld }
}
