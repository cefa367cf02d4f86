// What is said to somebody who asks faster than people do.

import type { Locale } from '../../ground/locale.ts'
import { Problem } from '../../ground/problem.ts'
import type { Text } from '../../ground/text.ts'

export const nothingRead = ({ say }: Locale): Text => say`(one question of many)`

export const askedTooOften = new Problem({
  what: ({ say }) => say`That is a lot at once, and I want to be there for the others too.`,
  final: true,
  expected: ({ say }) => say`ask again in a minute; tell me of smoke, heat or a swollen pack at any time`,
  example: 'current pack: 3S 720 LiHV',
})
