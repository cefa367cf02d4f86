// What a button says when it is pressed: which kept question to answer, and how much of the answer to show.

import { type Layer, layers } from '../../assistant/layers/opened.ts'

/** `brief` answers the question, a layer opens that of the answer. */
export type View = 'brief' | Layer

export interface Press {
  readonly view: View
  /** The id that the memory gave the question: a hash of its text, so a made-up one finds nothing. */
  readonly questionId: string
}

/** Under earlier answers a button says "working". */
const shape = /^v1:(\w+):([\w-]{16})$/
const views: ReadonlyMap<string, View> = new Map<string, View>([
  ['brief', 'brief'],
  ['working', 'why'],
  ...layers.map(layer => [layer, layer] as const),
])

/** 30 characters at most, of the 100 that Discord allows. */
export const writeCustomId = ({ view, questionId }: Press): string => `v1:${view}:${questionId}`

/** Undefined for what no version of ours that still counts has written. */
export function readCustomId(customId: string): Press | undefined {
  const [, name = '', questionId] = shape.exec(customId) ?? []
  const view = views.get(name)
  return view && questionId ? { view, questionId } : undefined
}
