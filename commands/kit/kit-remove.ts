// Removes something that is saved by name.

import { required, service } from '../../src/assistant/command.ts'
import { kitNameKind } from '../../src/assistant/kit/kit-name.ts'
import { ownerToChange, whose } from './kit-owner.ts'

export const kitRemove = service({
  name: 'kit remove',
  takes: { name: required(kitNameKind), for: whose },
  examples: ['kit remove name: wren'],
  changes: true,
  run: async ({ name, for: of = 'me' }, context) => {
    const { kit } = context.memory
    const owner = ownerToChange(of, context)
    const [entry] = await kit.find([owner], [name])
    const isRemoved = entry !== undefined && (await kit.remove(owner, name))
    return { owner, removed: isRemoved ? entry : undefined }
  },
})
