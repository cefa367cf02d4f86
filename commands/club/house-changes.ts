// From what a moderator asks to the changes of rules it means, none of them looser than the chemistry.

import { type ChemistryRule, houseRange } from '../../src/charging/setting/house-range.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { Chemistry } from '../../src/charging/things/chemistry.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { Show } from '../../src/ground/show.ts'
import { rateKind, voltageKind } from '../../src/language/kinds/values.ts'
import { chemistryNames } from '../../src/language/things/chemistry.ts'
import type { HouseChange } from '../../src/memory/memory.ts'
import { cite } from '../shared/working.ts'
import { limitText, ruleNames } from './house-words.ts'

/** A rule for cells as asked for; `null` lifts it, undefined leaves it. */
interface LimitAsked {
  readonly rule: ChemistryRule
  /** The option that it was asked with. */
  readonly option: string
  readonly value: number | null | undefined
}

/**
 * A rate is for every chemistry where none is named; a voltage always belongs to one. Throws a Problem for
 * a voltage without a chemistry and for a value looser than the chemistry allows.
 */
export function limitChanges(
  { rule, option, value }: LimitAsked,
  chemistry: Chemistry | undefined,
  show: Show,
): readonly HouseChange[] {
  if (value === undefined) return []
  if (chemistry === undefined && rule !== 'maxRate_C') {
    throw new Problem({
      what: `I need to know which cells the ${ruleNames[rule]} is for.`,
      token: option,
      expected: `chemistry: ${chemistryNames.join(', ')}`,
      example: `house set chemistry: LiPo ${option}: 3.80V`,
    })
  }
  const concerned = chemistry === undefined ? chemistries : [chemistry]
  return concerned.map(one => {
    if (value !== null) refuseOutside({ rule, option, value }, one, show)
    return { rule, chemistry: one.name, value }
  })
}

function refuseOutside(
  { rule, option, value }: LimitAsked & { readonly value: number },
  chemistry: Chemistry,
  show: Show,
): void {
  const { lowest, highest } = houseRange(rule, chemistry)
  if (value >= lowest.value && value <= highest.value) return
  const bound = value > highest.value ? highest : lowest
  const text = (limit: number) => limitText(rule, limit, show)
  const { write } = rule === 'maxRate_C' ? rateKind : voltageKind
  throw new Problem({
    what: `A house cannot set the ${ruleNames[rule]} of ${chemistry.name} to ${text(value)}.`,
    token: write(value),
    expected: `${text(lowest.value)} to ${text(highest.value)}; ${text(bound.value)} is the limit (${cite(bound)})`,
    example: `house set chemistry: ${chemistry.name} ${option}: ${write(bound.value)}`,
  })
}
