// What is said of permissions that we lack where we are asked, by Discord's own names of them.

import { told } from '../../ground/locale.ts'
import { joined } from '../../ground/text.ts'

/** `permissions` as Discord shows them; `channel` is its name. */
export const mayNotAnswer = told(({ say, own }, channel: string, permissions: readonly string[]) => {
  const needed = joined(
    permissions.map(name => own(`"${name}"`)),
    ', ',
  )
  return say`I may not answer in ${own(`#${channel}`)}: what I need there is ${needed}.`
})
