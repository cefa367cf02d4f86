// What stands before the parts of a reply, on every surface alike.

import type { Locale } from '../ground/locale.ts'

export const labelsIn = ({ say }: Locale) => ({
  /** Of what can be opened under a short answer. */
  layers: { why: say`Why`, figures: say`Figures`, care: say`Care` },
  /** Instead of a why, where the answer is a list. */
  all: say`All of it`,
  readAs: say`Read as`,
  assumed: say`Assumed`,
  whatIf: say`What if`,
  shortened: say`shortened to fit this message`,
  /** On a button, of the question that stands above it. */
  askThat: say`Ask that`,
  /** On a button that takes words which go on from the answer. */
  askMore: say`Ask more`,
})
