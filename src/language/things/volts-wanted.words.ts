// What is said where words or a percentage tell too little of a pack that is run down.

import type { Said } from '../../ground/locale.ts'

export const tooLittleTold: Said = ({ say }) =>
  say`That tells too little: the volts of its cells decide whether it may be charged.`

export const voltsOfLowest: Said = ({ say }) => say`volts per cell at rest, of the lowest cell`
