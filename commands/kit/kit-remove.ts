// Removes something that is saved by name.

import { kitNameKind } from '../../src/assistant/kit/kit-name.ts'
import { defineCommand, required } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { inWhoseKit, noSuchEntry, ownerToChange, whoseOption } from './kit-owner.ts'

export const kitRemove = defineCommand({
  name: 'kit remove',
  summary: 'Removes a saved pack, charger or source.',
  options: {
    name: required(kitNameKind, { description: 'its name' }),
    for: whoseOption('me (if you say nothing) or club, which only moderators change'),
  },
  examples: ['kit remove name: wren'],
  changes: true,
  answer: async ({ name, for: whose = 'me' }, context) => {
    const owner = ownerToChange(whose, context)
    const [entry] = await context.memory.kit.find([owner], [name])
    if (!entry || !(await context.memory.kit.remove(owner, name))) return noSuchEntry(name, owner)
    return {
      headline: `Removed: ${name} is no longer ${inWhoseKit(owner)}. It stood for ${entry.notation}.`,
      working: entry.kind === 'pack' ? ['Charges that were noted of it went with it.'] : [],
      cautions: [generalCaution],
    }
  },
})
