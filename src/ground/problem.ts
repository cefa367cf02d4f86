// What is wrong with a question, said so that the asker can mend it.

export interface ProblemDetails {
  /** What is wrong, one short sentence. */
  readonly what: string
  /** The word of the question that it is about, as the asker wrote it. */
  readonly token?: string
  /** What was expected instead, with its range. */
  readonly expected: string
  /** Something that would do. */
  readonly example: string
  /** Where the question itself tells of danger. */
  readonly verdict?: 'do not charge'
}

/** The one error that commands and readers throw on purpose; dispatch turns it into a reply. */
export class Problem extends Error {
  readonly details: ProblemDetails

  constructor(details: ProblemDetails) {
    super(details.what)
    this.name = 'Problem'
    this.details = details
  }
}

/** What `read` gives; undefined where it throws a Problem. */
export function attempt<T>(read: () => T): T | undefined {
  try {
    return read()
  } catch (error) {
    if (error instanceof Problem) return undefined
    throw error
  }
}
