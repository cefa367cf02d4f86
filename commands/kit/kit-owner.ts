// Whose kit a command is about: the asker's own, or the club's, which moderators look after.

import { optional } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { ownersFor } from '../../src/assistant/kit/kit-names.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import type { Owner } from '../../src/memory/owner.ts'
import { onlyModeratorsChange } from './kit-problems.words.ts'

export type Whose = 'me' | 'club'
export const whose = optional(choiceKind<Whose>('owner', ['me', 'club']))

/** The owner whose kit the asker wants to change. Throws a Problem where that takes a moderator. */
export function ownerToChange(of: Whose, context: Context): Owner {
  const [own, club] = ownersFor(context)
  if (of === 'me') return own
  if (context.asker.moderates) return club
  throw onlyModeratorsChange
}
