// What stands before the parts of a reply, on every surface alike.

import type { Verdict } from '../charging/envelope/judge.ts'
import type { Locale } from '../ground/locale.ts'
import type { Text } from '../ground/text.ts'

export interface Labels {
  readonly verdicts: Readonly<Record<Verdict, Text>>
  readonly verdict: Text
  readonly readAs: Text
  readonly seeAlso: Text
  readonly assumed: Text
  readonly figures: Text
  readonly working: Text
  /** Of an answer that is nothing but its working. */
  readonly details: Text
  readonly cautions: Text
  readonly whatIf: Text
  /** Of a question that cannot be answered: the word that it is about, what was expected, what would do. */
  readonly at: Text
  readonly expected: Text
  readonly example: Text
  readonly shortened: Text
  readonly showWorking: Text
  readonly hideWorking: Text
}

export const labelsIn = ({ say }: Locale): Labels => ({
  verdicts: { go: say`go`, 'go with care': say`go with care`, 'do not charge': say`do not charge` },
  verdict: say`Verdict`,
  readAs: say`Read as`,
  seeAlso: say`See also`,
  assumed: say`Assumed`,
  figures: say`Figures`,
  working: say`Working`,
  details: say`Details`,
  cautions: say`Cautions`,
  whatIf: say`What if`,
  at: say`At`,
  expected: say`Expected`,
  example: say`For example`,
  shortened: say`shortened to fit this message`,
  showWorking: say`Show working`,
  hideWorking: say`Hide working`,
})
