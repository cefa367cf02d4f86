// Shows what is saved by name: the asker's own kit, then the club's.

import { optional, service } from '../../src/assistant/command.ts'
import { kitNameKind } from '../../src/assistant/kit/kit-name.ts'
import { ownersFor } from '../../src/assistant/kit/kit-names.ts'
import { figure } from '../../src/assistant/quantified.ts'
import type { KitKind } from '../../src/memory/memory.ts'
import { type Whose, whose } from './kit-owner.ts'

/** Of each owner; a longer list is no use in a chat, and a start of the name finds the rest. */
const mostShown = 30
const kinds: readonly KitKind[] = ['pack', 'charger', 'source']

export const kitList = service({
  name: 'kit list',
  takes: { starts: optional(kitNameKind), for: whose },
  examples: ['kit list', 'kit list starts: wr for: club'],
  run: async ({ starts = '', for: wanted }, context) => {
    const { kit } = context.memory
    const [own, club] = ownersFor(context)
    const owners = [
      { whose: 'me', owner: own },
      { whose: 'club', owner: club },
    ] as const satisfies readonly { whose: Whose; owner: unknown }[]
    const kits = await Promise.all(
      owners
        .filter(one => wanted === undefined || one.whose === wanted)
        .map(async one => {
          const entries = await kit.startingWith([one.owner], starts, kinds, mostShown + 1)
          return {
            whose: one.whose,
            count: await kit.count(one.owner),
            entries: entries.slice(0, mostShown),
            more: entries.length > mostShown,
          }
        }),
    )
    return { kits, total: kits.reduce((sum, { count }) => sum + count, 0) }
  },
  figures: ({ total }) => [figure.count('savedNames', total)],
})
