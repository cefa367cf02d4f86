// What is said below an answer of what can be opened, and of what is left out.

import { whole } from '../../assistant/layers/budget.ts'
import type { Locale } from '../../ground/locale.ts'
import { joined, type Text } from '../../ground/text.ts'

/** "React: ❔ why · 🔢 figures" */
export const reactWords = (
  taps: readonly { readonly sign: string; readonly label: Text | undefined }[],
  { own }: Locale,
): Text =>
  joined(
    // No line ends within a label.
    taps.map(({ sign, label = '' }) => own(whole(`${sign} ${label}`))),
    ' · ',
  )

export const leftOut = ({ say }: Locale): Text => say`The rest does not fit this message.`
