// What is said where a pack was told without its capacity.

import type { Said } from '../../src/ground/locale.ts'

export const hangsOnCapacity: Said = ({ say }) => say`How much and how long hangs on the capacity of the pack.`
export const capacityWanted: Said = ({ say }) => say`the pack with its capacity`
