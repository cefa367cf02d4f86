// Whose kit a command is about: the asker's own, or the club's, which moderators look after.

import type { Context } from '../../src/assistant/context.ts'
import { ownersFor } from '../../src/assistant/kit/kit-names.ts'
import { optional } from '../../src/assistant/old-command.ts'
import type { Answer } from '../../src/assistant/reply.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { Problem } from '../../src/ground/problem.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import type { Owner } from '../../src/memory/owner.ts'

export type Whose = 'me' | 'club'

export const whoseOption = (description: string) =>
  optional(choiceKind('owner', ['me', 'club']), {
    description,
    phrase: whose => `for ${whose === 'me' ? 'you' : 'the club'}`,
  })

/** The owner whose kit the asker wants to change. Throws a Problem where that takes a moderator. */
export function ownerToChange(whose: Whose, context: Context): Owner {
  const [own, club] = ownersFor(context)
  if (whose === 'me') return own
  if (context.asker.moderates) return club
  throw new Problem({
    what: "Only moderators change the club's kit.",
    token: 'club',
    expected: '"for: me", which is your own kit, or ask a moderator',
    example: 'kit save name: wren pack: 3S 720 LiHV for: me',
  })
}

export const inWhoseKit = (owner: Owner): string =>
  owner.scope === 'person' ? 'in your kit' : "in the club's kit"

/** For a name that the owner has not saved: nothing is changed. */
export function noSuchEntry(name: string, owner: Owner): Answer {
  const hint = owner.scope === 'person' ? ' One of the club\'s is meant with "for: club".' : ''
  return {
    headline: `There is no "${name}" ${inWhoseKit(owner)}, so nothing was changed.`,
    working: [`"kit list" shows every name.${hint}`],
    cautions: [generalCaution],
  }
}
