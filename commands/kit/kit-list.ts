// Shows what is saved by name: the asker's own kit, then the club's.

import { kitNameKind } from '../../src/assistant/kit/kit-name.ts'
import { ownersFor } from '../../src/assistant/kit/kit-names.ts'
import { defineCommand, optional } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import type { KitEntry, KitKind } from '../../src/memory/memory.ts'
import { figuresIn } from '../shared/figure.ts'
import { whoseOption } from './kit-owner.ts'

/** Of each owner; a longer list is no use in a chat, and a start of the name finds the rest. */
const mostShown = 30
const kinds: readonly KitKind[] = ['pack', 'charger', 'source']

export const kitList = defineCommand({
  name: 'kit list',
  summary: 'Shows the packs, chargers and sources saved by name.',
  options: {
    starts: optional(kitNameKind, {
      description: 'only names that start so',
      phrase: text => `names that start with "${text}"`,
    }),
    for: whoseOption('me or club; both if you say nothing'),
  },
  examples: ['kit list', 'kit list starts: wr for: club'],
  plainWords: ['kit', 'the kit', 'what is in my kit', 'what is saved', 'my kit', 'our kit'],
  answer: async ({ starts = '', for: whose }, context) => {
    const { memory, show } = context
    const [own, club] = ownersFor(context)
    const wanted = [own, club].filter(owner => !whose || (owner === own) === (whose === 'me'))
    const kits = await Promise.all(
      wanted.map(async owner => ({
        title: owner === own ? 'Yours' : "The club's",
        count: await memory.kit.count(owner),
        entries: await memory.kit.startingWith([owner], starts, kinds, mostShown + 1),
      })),
    )
    const total = kits.reduce((sum, { count }) => sum + count, 0)
    return {
      headline:
        total > 0
          ? `Saved by name: ${kits.map(({ title, count }) => `${title.toLowerCase()} ${count}`).join(', ')}.`
          : 'Nothing is saved by name yet. Save a pack with: kit save name: wren pack: 3S 720 LiHV',
      figures: [figuresIn(show).count('savedNames', 'saved names', total)],
      working: kits.flatMap(({ title, entries }) => lines(title, entries)),
      cautions: [generalCaution],
    }
  },
})

function lines(title: string, entries: readonly KitEntry[]): readonly string[] {
  const shown = entries
    .slice(0, mostShown)
    .map(({ name, kind, notation }) => `${title}: ${name}, ${kind} ${notation}`)
  const more = `${title}: there are more. Say how the name starts: kit list starts: wr`
  return entries.length > mostShown ? [...shown, more] : shown
}
