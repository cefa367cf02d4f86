// Gives something that is saved another name.

import { changing } from '../../src/assistant/changing.ts'
import { required, service } from '../../src/assistant/command.ts'
import { kitNameKind, newNameKind, refuseTakenName } from '../../src/assistant/kit/kit-name.ts'
import { ownerToChange, whose } from './kit-owner.ts'
import { takenName } from './kit-problems.words.ts'

export const kitRename = service({
  name: 'kit rename',
  takes: { name: required(kitNameKind), to: required(newNameKind), for: whose },
  examples: ['kit rename name: wren to: wren-old'],
  changes: true,
  run: async ({ name, to, for: of = 'me' }, context) => {
    const owner = ownerToChange(of, context)
    refuseTakenName(to, context.vocabulary)
    return changing(context, async ({ kit }) => {
      const [before] = await kit.find([owner], [name])
      const outcome = await kit.rename(owner, name, to)
      if (outcome === 'taken') throw takenName(to, owner)
      return { result: { owner, outcome }, change: before && { of: 'kit', before, after: { ...before, name: to } } }
    })
  },
})
