// The rules of a club, shown beside those of the chemistry.

import { service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import type { ChemistryRule } from '../../src/charging/setting/house-range.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { Chemistry } from '../../src/charging/things/chemistry.ts'

const keys: Readonly<Record<ChemistryRule, string>> = {
  maxRate_C: 'highestRate',
  fullPerCell_V: 'highestVolts',
  storagePerCell_V: 'storage',
  sourceFloorPerCell_V: 'sourceFloor',
}

interface ShownRule {
  readonly key: string
  readonly rule: ChemistryRule
  readonly chemistry: Chemistry
}

/** Every rule of every chemistry. */
export const shownRules = (): readonly ShownRule[] =>
  chemistries.flatMap(chemistry =>
    (Object.keys(keys) as ChemistryRule[]).map(rule => ({
      key: `${keys[rule]}${inKey(chemistry.name)}`,
      rule,
      chemistry,
    })),
  )

/** What its moderators have set, and the chemistry's limits beside it. */
export const houseShow = service({
  name: 'house show',
  shelf: 'club limits',
  takes: {},
  examples: ['house show'],
  run: (_, { house }) => ({
    house,
    rules: shownRules().map(one => {
      const set = house[one.rule]?.[one.chemistry.name]
      return { ...one, value: set ?? chemistryValue(one), isSet: set !== undefined }
    }),
  }),
  figures: ({ rules }) =>
    rules.map(({ key, rule, value }) => (rule === 'maxRate_C' ? figure.rate(key, value) : figure.perCell(key, value))),
})

function chemistryValue({ rule, chemistry }: ShownRule): number {
  const { highestRate_C, full_V, storage_V, loadFloor_V } = chemistry
  const limits = {
    maxRate_C: highestRate_C,
    fullPerCell_V: full_V,
    storagePerCell_V: storage_V,
    sourceFloorPerCell_V: loadFloor_V,
  }
  return limits[rule].value
}

/** `LiIon` of "Li-ion". */
export const inKey = (name: string): string =>
  name.replace(/[^\p{L}\d]+(\p{L}?)/gu, (_, letter: string) => letter.toUpperCase())
