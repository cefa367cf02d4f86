// Where a charge ends: at a current, at a share of the one that is set, by the charger's clock, or in steps.

import type { ChargeEnd } from '../../src/charging/things/charge-end.ts'
import { plainText } from '../../src/ground/plain-text.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { currentKind, durationKind } from '../../src/language/kinds/values.ts'

/** What `time` is told of it, as its request has it. */
export type Ends = { readonly termination_A: number } | { readonly end: ChargeEnd } | { readonly timer_s: number }

export const isLength = (text: string): boolean => /^\d[\d.,]* ?(?:h|min)/i.test(text)
const shareWord = /^(?:an? )?(tenth|twentieth)(?: of the (?:set )?current)?$/i

const steps = /^(?:in )?steps?(?: down)?$/i

export const endKind: ValueKind<Ends> = {
  ...currentKind,
  read: (text, earlier) => {
    const share = shareWord.exec(plainText(text))?.[1]?.toLowerCase()
    if (share) return { value: { end: share as ChargeEnd }, assumed: [] }
    if (steps.test(plainText(text))) return { value: { end: 'steps' }, assumed: [] }
    if (isLength(text)) return { value: { timer_s: durationKind.read(text, earlier).value }, assumed: [] }
    return { value: { termination_A: currentKind.read(text, earlier).value }, assumed: [] }
  },
  write: ends => {
    if ('end' in ends) return ends.end === 'steps' ? ends.end : `a ${ends.end}`
    return 'timer_s' in ends ? durationKind.write(ends.timer_s) : currentKind.write(ends.termination_A)
  },
}
