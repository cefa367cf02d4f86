// What is sent besides an answer, and under which ids it is noted so that it goes with its question.

/** A line is what is said in the room of an answer that was given in private. */
export const parts = ['picture', 'document', 'line'] as const

export const partOf = (question: string, part: (typeof parts)[number], at: number): string =>
  `${question}#${part}-${at + 1}`

/** The question that such an id begins with, or the id as it is. */
export const wholeOf = (id: string): string => id.replace(/#.*$/, '')
