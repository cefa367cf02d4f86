// Whose answers are for the asker alone, and which they would rather see alone.

import type { Reply } from './reply.ts'

const personal: ReadonlySet<string> = new Set(['export me', 'lesson answer', 'lesson list', 'remind list'])

/** What is kept about them, what they have learned, when they are to be called: in private wherever it is asked. */
export const isPersonal = (command: string): boolean => personal.has(command)

const own: ReadonlySet<string> = new Set(['remind', 'log', 'lesson', 'export', 'forget', 'kit'])

/** A question, in notation, about the asker's own things: shown to them alone where that costs nothing. */
export const isOwn = (question: string): boolean =>
  own.has(question.split(' ', 1)[0] ?? '') && !/ for: club\b/.test(question)

/** The same of what came of it. Where it could not be read it is asked back where others may read it: it tells nothing yet. */
export const isForAsker = ({ question = '' }: Pick<Reply, 'question'>): boolean => isOwn(question)
