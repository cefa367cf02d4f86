// How far a person has come with the lessons, and the question that waits for their answer.

/** A question that was put to somebody: drawn again from its seed it is the same. */
export interface PendingQuestion {
  /** Of the lesson and the question in it, as "c-rate/amps". */
  readonly question: string
  readonly seed: number
}

export interface LessonMemory {
  /** Puts the question in place of any that waits. */
  ask(person: string, question: PendingQuestion): Promise<void>
  pending(person: string): Promise<PendingQuestion | undefined>
  /**
   * Takes the question away, notes it as learned where `right`; false where it does not wait any longer, so that of
   * two answers at once only one counts.
   */
  settle(person: string, asked: PendingQuestion, right: boolean): Promise<boolean>
  /** The questions that were answered right once. */
  learned(person: string): Promise<readonly string[]>
}
