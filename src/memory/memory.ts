// What the assistant remembers for its communities, behind one interface whatever database keeps it.

/** Questions kept so that a short id on a button can stand for them, also after a restart. */
export interface QuestionMemory {
  /** Keeps the question and returns its id: 16 characters, the same for the same question. */
  keep(question: string): Promise<string>
  find(id: string): Promise<string | undefined>
}

/** One question that was answered: which message asked, which answered. */
export interface AnsweredQuestion {
  /** Unique across surfaces, as are the message ids: "discord:…", "matrix:…". */
  readonly place: string
  readonly askedBy: string
  readonly questionMessage: string
  readonly answerMessage: string
  /** In canonical notation. */
  readonly question: string
  readonly answeredAt: Date
}

/** Which messages were answered: so that none is answered twice, an edit finds its answer, a reply its question. */
export interface AnsweredMemory {
  record(answered: AnsweredQuestion): Promise<void>
  byQuestion(questionMessage: string): Promise<AnsweredQuestion | undefined>
  byAnswer(answerMessage: string): Promise<AnsweredQuestion | undefined>
  /** Drops what is older. */
  forgetBefore(time: Date): Promise<void>
}

export interface Memory {
  readonly questions: QuestionMemory
  readonly answered: AnsweredMemory
  close(): Promise<void>
}
