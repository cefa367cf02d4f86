// What Discord's menu says of an option that every slash command has.

import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'

export const aboutPrivate = ({ say }: Locale): Text => say`Whether only you see the answer`
