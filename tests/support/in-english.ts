// What a reader assumed, in words, to be compared.

import { english } from '../../src/ground/locale.ts'
import type { Read } from '../../src/language/scan/read.ts'

export const inEnglish = <T>({ value, assumed }: Read<T>) => ({
  value,
  assumed: assumed.map((said): string => said(english('.'))),
})
