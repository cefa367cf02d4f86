// From what a moderator asks to the changes of rules it means, none of them looser than the chemistry.

import { type ChemistryRule, coldestRange_C, houseRange } from '../../src/charging/setting/house-range.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { Chemistry } from '../../src/charging/things/chemistry.ts'
import { problemAt } from '../../src/ground/plain-text.ts'
import { rateKind, temperatureKind, voltageKind } from '../../src/language/kinds/values.ts'
import { chemistryNames } from '../../src/language/things/chemistry.ts'
import type { HouseChange, HouseRules } from '../../src/memory/memory.ts'
import {
  coldestExpected,
  coldestOutside,
  forWhichCells,
  forWhichCellsExpected,
  outside,
  outsideExpected,
} from './house-problems.words.ts'

/** A rule for cells as asked for; `null` lifts it, undefined leaves it. */
interface LimitAsked {
  readonly rule: ChemistryRule
  readonly option: string
  readonly value: number | null | undefined
}

/**
 * A rate is for every chemistry that may have as much where none is named, and so is what is lifted; a voltage belongs to one. Throws a Problem for
 * a voltage without a chemistry and for a value looser than the chemistry allows.
 */
export function limitChanges(
  { rule, option, value }: LimitAsked,
  chemistry: Chemistry | undefined,
): readonly HouseChange[] {
  if (value === undefined) return []
  if (chemistry === undefined && rule !== 'maxRate_C' && value !== null) {
    const asked = chemistryNames.map(name => ({
      label: name,
      question: `house set chemistry: ${name} ${option}: ${voltageKind.write(value)}`,
    }))
    const expected = forWhichCellsExpected(chemistryNames)
    throw problemAt(option, forWhichCells(rule), { expected, example: 'LiPo' }).offering(asked)
  }
  // A rate for all leaves those alone that may not have as much anyway.
  const isTighter = (one: Chemistry) => value === null || value <= houseRange(rule, one).highest.value
  const concerned = chemistry === undefined ? chemistries.filter(isTighter) : [chemistry]
  if (concerned.length === 0) refuseOutside({ rule, option, value: value as number }, chemistries[0])
  return concerned.map(one => {
    if (value !== null) refuseOutside({ rule, option, value }, one)
    return { rule, chemistry: one.name, value }
  })
}

/** Throws a Problem for cells colder than any may be charged, and for a limit that no field day meets. */
export function coldestChange(value: number | null): HouseChange {
  const { lowest, highest } = coldestRange_C
  if (value !== null && (value < lowest || value > highest)) {
    throw problemAt(temperatureKind.write(value), coldestOutside(value), {
      expected: coldestExpected,
      example: 'house set coldest: 10°C',
    })
  }
  return { rule: 'coldest_C', value }
}

function refuseOutside({ rule, option, value }: LimitAsked & { readonly value: number }, chemistry: Chemistry): void {
  const { lowest, highest } = houseRange(rule, chemistry)
  if (value >= lowest.value && value <= highest.value) return
  const bound = value > highest.value ? highest : lowest
  const { write } = rule === 'maxRate_C' ? rateKind : voltageKind
  throw problemAt(write(value), outside(rule, chemistry, value), {
    expected: outsideExpected(rule, [lowest, highest], bound),
    example: `house set chemistry: ${chemistry.name} ${option}: ${write(bound.value)}`,
  })
}

/** The rules that the changes name, as they are now: to change them back. */
export const standingRules = (changes: readonly HouseChange[], rules: HouseRules): readonly HouseChange[] =>
  changes.map(change => {
    const value = 'chemistry' in change ? rules[change.rule]?.[change.chemistry] : rules[change.rule]
    return { ...change, value: value ?? null } as HouseChange
  })
