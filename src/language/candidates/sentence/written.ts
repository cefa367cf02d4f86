// Numbers in the notation, without binary noise.

import { shiftedDecimal } from '../../scan/number.ts'

/** Plain decimals of `value` times ten to the `shift`. */
export const decimalText = (value: number, shift = 0): string => shiftedDecimal(Number(value.toPrecision(12)), shift)
