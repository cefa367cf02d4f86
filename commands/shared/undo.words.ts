// What is said behind a change that its maker may still take back.

import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'

export const undoLine = ({ say }: Locale): Text => say`"undo" takes it back, for ten minutes.`
