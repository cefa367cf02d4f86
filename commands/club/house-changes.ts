// From what a moderator asks to the changes of rules it means, none of them looser than the chemistry.

import { type ChemistryRule, coldestRange_C, houseRange } from '../../src/charging/setting/house-range.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { Chemistry } from '../../src/charging/things/chemistry.ts'
import { voltageKind } from '../../src/language/kinds/values.ts'
import type { HouseChange, HouseRules } from '../../src/memory/memory.ts'
import { coldestOutside, forWhichCells, limitOutside } from './house-problems.words.ts'

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
    throw forWhichCells(rule, option, voltageKind.write(value))
  }
  // A rate for all leaves those alone that may not have as much anyway.
  const isTighter = (one: Chemistry) => value === null || value <= houseRange(rule, one).highest.value
  const concerned = chemistry === undefined ? chemistries.filter(isTighter) : [chemistry]
  if (concerned.length === 0) throw limitOutside(rule, option, chemistries[0], value as number)
  return concerned.map(one => {
    if (value !== null && !isWithin(value, houseRange(rule, one))) throw limitOutside(rule, option, one, value)
    return { rule, chemistry: one.name, value }
  })
}

/** Throws a Problem for cells colder than any may be charged, and for a limit that no field day meets. */
export function coldestChange(value: number | null): HouseChange {
  const { lowest, highest } = coldestRange_C
  if (value !== null && (value < lowest || value > highest)) throw coldestOutside(value)
  return { rule: 'coldest_C', value }
}

const isWithin = (value: number, { lowest, highest }: ReturnType<typeof houseRange>): boolean =>
  value >= lowest.value && value <= highest.value

/** The rules that the changes name, as they are now: to change them back. */
export const standingRules = (changes: readonly HouseChange[], rules: HouseRules): readonly HouseChange[] =>
  changes.map(change => {
    const value = 'chemistry' in change ? rules[change.rule]?.[change.chemistry] : rules[change.rule]
    return { ...change, value: value ?? null } as HouseChange
  })
