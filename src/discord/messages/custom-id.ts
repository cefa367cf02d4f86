// What a button says when it is pressed: which kept question to answer, and whether with its working.

/** `brief` answers the question, `working` answers it with the working shown. */
export type View = 'brief' | 'working'

export interface Press {
  readonly view: View
  /** The id that the memory gave the question: a hash of its text, so a made-up one finds nothing. */
  readonly questionId: string
}

const shape = /^v1:(brief|working):([\w-]{16})$/

/** 30 characters at most, of the 100 that Discord allows. */
export const writeCustomId = ({ view, questionId }: Press): string => `v1:${view}:${questionId}`

/** Undefined for what no version of ours that still counts has written. */
export function readCustomId(customId: string): Press | undefined {
  const [, view, questionId] = shape.exec(customId) ?? []
  return view && questionId ? { view: view as View, questionId } : undefined
}
