// What is said where the memory is away: of what could not be looked up, and of what could not be saved.

import type { Locale } from '../../ground/locale.ts'
import { Problem } from '../../ground/problem.ts'
import type { Caution } from '../reply.ts'

export const notLookedUp = ({ say }: Locale): Caution => ({
  key: 'notLookedUp',
  text: say`My memory does not answer: saved names and the club's rules could not be looked up. The strictest rules that I know of hold, unconfirmed.`,
  must: true,
})

/** Where the connection broke in the last moment, it may be saved after all. */
export const notSaved = new Problem({
  final: true,
  what: ({ say }) => say`Not saved: my memory does not answer.`,
  expected: ({ say }) => say`try again in a minute, and look first whether it is there`,
  example: 'help',
})

export const notRead = new Problem({
  final: true,
  what: ({ say }) => say`I cannot look that up: my memory does not answer.`,
  expected: ({ say }) => say`try again in a minute; charging questions go on meanwhile`,
  example: 'current pack: 3S 720 LiHV',
})
