// What a button says when it is pressed: which kept question to answer, and how much of the answer to show.

import { type Layer, layers } from '../../assistant/layers/opened.ts'

/** `brief` answers the question, a layer opens that of the answer. */
export type View = 'brief' | Layer

/** What a button does: shows something, or takes words that go on from the question. */
type Deed = View | 'further'

export interface Press {
  readonly deed: Deed
  /** The id that the memory gave the question: a hash of its text, so a made-up one finds nothing. */
  readonly questionId: string
}

/** Under earlier answers a button says "working". */
const shape = /^v1:(\w+):([\w-]{16})$/
const deeds: ReadonlyMap<string, Deed> = new Map<string, Deed>([
  ['brief', 'brief'],
  ['further', 'further'],
  ['working', 'why'],
  ...layers.map(layer => [layer, layer] as const),
])

/** 27 characters at most, of the 100 that Discord allows. */
export const writeCustomId = ({ deed, questionId }: Press): string => `v1:${deed}:${questionId}`

/** Undefined for what no version of ours that still counts has written. */
export function readCustomId(customId: string): Press | undefined {
  const [, name = '', questionId] = shape.exec(customId) ?? []
  const deed = deeds.get(name)
  return deed && questionId ? { deed, questionId } : undefined
}
