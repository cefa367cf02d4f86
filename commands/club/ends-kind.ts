// Where the chargers of a club end: one of the usual ends, or after how long by their clocks.

import { ruleKind } from '../../src/assistant/naming/told-rules.ts'
import { allEnds, type ChargeEnd } from '../../src/charging/things/charge-end.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { durationKind } from '../../src/language/kinds/values.ts'
import { isLength } from '../charge/end-kind.ts'

const choices = choiceKind(ruleKind, allEnds)

export const endsKind: ValueKind<ChargeEnd | number> = {
  ...choices,
  read: (text, earlier) => (isLength(text) ? durationKind : choices).read(text, earlier),
  write: end => (typeof end === 'number' ? durationKind.write(end) : end),
}
