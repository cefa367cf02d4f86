// What Discord's menu says of an option that every slash command has.

import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'

/** Of the asker's own things they see the answer alone unless they say otherwise. */
export const aboutPrivateOwn = ({ say }: Locale): Text =>
  say`Whether only you see the answer: so it is unless you choose False`
export const aboutPrivate = ({ say }: Locale): Text => say`Whether only you see the answer`
