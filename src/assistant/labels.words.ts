// What stands before the parts of a reply, on every surface alike.

import type { Locale } from '../ground/locale.ts'
import type { Text } from '../ground/text.ts'

export interface Labels {
  /** Of what can be opened under a short answer. */
  readonly layers: Readonly<Record<'why' | 'figures' | 'care', Text>>
  /** Instead of a why, where the answer is a list. */
  readonly all: Text
  readonly readAs: Text
  readonly assumed: Text
  readonly whatIf: Text
  readonly shortened: Text
  /** On a button, of the question that stands above it. */
  readonly askThat: Text
  /** On a button that takes words which go on from the answer. */
  readonly askMore: Text
}

export const labelsIn = ({ say }: Locale): Labels => ({
  layers: { why: say`Why`, figures: say`Figures`, care: say`Care` },
  all: say`All of it`,
  readAs: say`Read as`,
  assumed: say`Assumed`,
  whatIf: say`What if`,
  shortened: say`shortened to fit this message`,
  askThat: say`Ask that`,
  askMore: say`Ask more`,
})
