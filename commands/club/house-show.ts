// Shows the charging rules of this club: what its moderators have set, and the chemistry's limits beside it.

import type { Context } from '../../src/assistant/context.ts'
import { defineCommand } from '../../src/assistant/old-command.ts'
import type { Figure } from '../../src/assistant/reply.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import type { ChemistryRule } from '../../src/charging/setting/house-range.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { Chemistry } from '../../src/charging/things/chemistry.ts'
import { inKey, limitText, ruleNames, settingText } from './house-words.ts'

const chemistryRules: readonly ChemistryRule[] = ['maxRate_C', 'storagePerCell_V', 'sourceFloorPerCell_V']
const keys: Readonly<Record<ChemistryRule, string>> = {
  maxRate_C: 'highestRate',
  storagePerCell_V: 'storage',
  sourceFloorPerCell_V: 'sourceFloor',
}

export const houseShow = defineCommand({
  name: 'house show',
  summary: 'Shows the charging rules of this club.',
  options: {},
  examples: ['house show'],
  plainWords: ['house rules', 'rules of the house', 'club limits'],
  answer: (_, context) => {
    const { house } = context
    const figures = chemistries.flatMap(chemistry =>
      chemistryRules.map(rule => ruleFigure(rule, chemistry, context)),
    )
    const set = chemistries.flatMap(({ name }) =>
      chemistryRules.filter(rule => house[rule]?.[name] !== undefined),
    )
    return {
      headline:
        set.length > 0 || house.gentleLiIon
          ? 'This house has tightened some limits; where it has not, the chemistry stands.'
          : 'This house has tightened no limit: the chemistry stands.',
      figures,
      working: [
        `${ruleNames.gentleLiIon}: ${settingText('gentleLiIon', house.gentleLiIon ?? false)}`,
        `${ruleNames.decimalMark}: ${settingText('decimalMark', house.decimalMark ?? '.')}`,
        `${ruleNames.language}: ${settingText('language', house.language ?? 'English')}`,
        `${ruleNames.privateAnswers}: ${settingText('privateAnswers', house.privateAnswers ?? 'everyone')}`,
        'Moderators change a rule with "house set".',
      ],
      cautions: [generalCaution],
    }
  },
})

function ruleFigure(rule: ChemistryRule, chemistry: Chemistry, { house, show }: Context): Figure {
  const { name } = chemistry
  const own = house[rule]?.[name]
  const value = own ?? chemistryValue(rule, chemistry)
  return {
    key: `${keys[rule]}${inKey(name)}`,
    label: `${name}, ${ruleNames[rule]}`,
    value,
    unit: rule === 'maxRate_C' ? 'C' : 'V',
    text: `${limitText(rule, value, show)} (${own === undefined ? 'chemistry' : 'this house'})`,
  }
}

function chemistryValue(rule: ChemistryRule, { highestRate_C, storage_V, loadFloor_V }: Chemistry): number {
  const limits = { maxRate_C: highestRate_C, storagePerCell_V: storage_V, sourceFloorPerCell_V: loadFloor_V }
  return limits[rule].value
}
