// What is said where neither a pack nor its chemistry was named.

import type { Said } from '../../src/ground/locale.ts'
import { anyChemistry } from '../../src/language/things/chemistry.ts'

export const packWanted: Said = ({ say }) => say`I need the pack or its chemistry: the same volts mean other charges.`
export const packOrItsKind: Said = ({ say, own }) =>
  say`pack: cells, capacity and chemistry, or chemistry: ${own(anyChemistry)}, with the cells before it if you like (${own('3S LiPo')})`
