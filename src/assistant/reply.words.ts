// What every reply ends with.

import type { Locale } from '../ground/locale.ts'
import type { Text } from '../ground/text.ts'

export const deferenceIn = ({ say }: Locale): Text =>
  say`The maker's datasheet and your local rules stand above this answer; where they are stricter, follow them.`
