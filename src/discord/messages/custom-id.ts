// What a button says when it is pressed: which question to answer, and how much of the answer to show. A short question
// stands in it whole, so that nothing is kept for it; a longer one is kept by the memory.

import { type Layer, layers } from '../../assistant/layers/opened.ts'
import type { QuestionMemory } from '../../memory/memory.ts'

/** `brief` answers the question, a layer opens that of the answer. */
export type View = 'brief' | Layer

/** What a button does: shows something, or takes words that go on from the question. */
type Deed = View | 'further'

/** A question whole, or the id that the memory gave it: a hash of its text, so a made-up one finds nothing. */
export type Behind = { readonly whole: string } | { readonly id: string }

export interface Press {
  readonly deed: Deed
  readonly question: Behind
}

/** Of the 100 characters that Discord allows those that no deed needs: https://docs.discord.com/developers/components/reference#button */
const longestWhole = 88

/** Under earlier answers a button says "working". */
const shape = /^(?:v1:(?<of>\w+):(?<id>[\w-]{16})|v2:(?<does>\w+):(?<whole>.{1,88}))$/su
const deeds: ReadonlyMap<string, Deed> = new Map<string, Deed>([
  ['brief', 'brief'],
  ['further', 'further'],
  ['working', 'why'],
  ...layers.map(layer => [layer, layer] as const),
])

export const isShort = (question: string): boolean => question !== '' && question.length <= longestWhole

export const writeCustomId = ({ deed, question }: Press): string =>
  'whole' in question ? `v2:${deed}:${question.whole}` : `v1:${deed}:${question.id}`

/** Undefined for what no version of ours that still counts has written. */
export function readCustomId(customId: string): Press | undefined {
  const { of, id, does = of, whole } = shape.exec(customId)?.groups ?? {}
  const deed = deeds.get(does ?? '')
  if (!deed) return undefined
  return { deed, question: id === undefined ? { whole: whole ?? '' } : { id } }
}

/** The question behind a button; undefined where it is kept no longer. */
export const questionBehind = async ({ question }: Press, questions: QuestionMemory): Promise<string | undefined> =>
  'whole' in question ? question.whole : questions.find(question.id)
