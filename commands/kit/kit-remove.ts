// Removes something that is saved by name.

import { changing } from '../../src/assistant/changing.ts'
import { required, service } from '../../src/assistant/command.ts'
import { kitNameKind } from '../../src/assistant/kit/kit-name.ts'
import { ownerToChange, whose } from './kit-owner.ts'
import { removesEntry } from './kit-problems.words.ts'

export const kitRemove = service({
  name: 'kit remove',
  takes: { name: required(kitNameKind), for: whose },
  examples: ['kit remove name: wren'],
  changes: true,
  confirm: async ({ name, for: of = 'me' }, context) => {
    const [entry] = await context.memory.kit.find([ownerToChange(of, context)], [name])
    return entry && removesEntry(entry)
  },
  run: async ({ name, for: of = 'me' }, context) => {
    const owner = ownerToChange(of, context)
    return changing(context, async ({ kit, log }) => {
      const [before] = await kit.find([owner], [name])
      const charges = await log.of(owner, name)
      await kit.remove(owner, name)
      const result = { owner, removed: before }
      return { result, change: before && { of: 'kit', before, log: charges } }
    })
  },
})
