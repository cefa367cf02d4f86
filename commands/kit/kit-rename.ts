// Gives something that is saved another name.

import { kitNameKind, newNameKind, refuseTakenName } from '../../src/assistant/kit/kit-name.ts'
import { defineCommand, required } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { Problem } from '../../src/ground/problem.ts'
import { inWhoseKit, noSuchEntry, ownerToChange, whoseOption } from './kit-owner.ts'

export const kitRename = defineCommand({
  name: 'kit rename',
  summary: 'Gives a saved pack, charger or source another name.',
  options: {
    name: required(kitNameKind, { description: 'the name it has' }),
    to: required(newNameKind, { description: 'the name it gets' }),
    for: whoseOption('me (if you say nothing) or club, which only moderators change'),
  },
  examples: ['kit rename name: wren to: wren-old'],
  changes: true,
  answer: async ({ name, to, for: whose = 'me' }, context) => {
    const owner = ownerToChange(whose, context)
    refuseTakenName(to, context.vocabulary)
    const outcome = await context.memory.kit.rename(owner, name, to)
    if (outcome === 'missing') return noSuchEntry(name, owner)
    if (outcome === 'taken') {
      throw new Problem({
        what: `There is a "${to}" ${inWhoseKit(owner)} already.`,
        token: to,
        expected: 'a name that is not taken, or remove the other first',
        example: `kit remove name: ${to}`,
      })
    }
    return { headline: `Renamed: ${name} is now ${to} ${inWhoseKit(owner)}.`, cautions: [generalCaution] }
  },
})
