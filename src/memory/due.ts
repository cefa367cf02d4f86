// Work that is due at a time: reminders, questions and their answers, whatever is done again and again. One table for all.

/** A piece of work: done once, by whoever takes it, whatever the number of replicas. */
export interface Due {
  /** Of the platform, where one gave it; whatever comes under the same id again is not new. */
  readonly id: string
  /** Who does it. */
  readonly kind: string
  /** Whose it is, and where; empty where nobody's and nowhere. */
  readonly person: string
  readonly place: string
  /** All that is to be known to do it, as JSON has it. */
  readonly body: unknown
  readonly dueAt: Date
  /** Later than this it is of no use; for ever where absent. */
  readonly latestAt?: Date | undefined
  /** How often it was taken since it was last done, or made. */
  readonly tries: number
}

export type NewDue = Omit<Due, 'tries'>

export interface Waiting {
  readonly kind: string
  readonly count: number
  /** That were tried before, in vain. */
  readonly retried: number
  /** Since when the first of them is due, or when it will be. */
  readonly firstDueAt: Date
}

export interface DueMemory {
  /** Those that are new by their id; gives how many were. */
  add(...works: readonly NewDue[]): Promise<number>
  /** Waiting or done: of what is done nothing but its id is kept. Others who look for it wait until a transaction ends. */
  find(id: string): Promise<(Due & { readonly isDone: boolean }) | undefined>
  /** What waits of a person, in the order in which it is due. */
  of(person: string, kind: string): Promise<readonly Due[]>
  waiting(): Promise<readonly Waiting[]>
  /**
   * Takes what is due of the kind, where `surfaces` are told in places of these: to take it is to put it off for
   * `lease_s` seconds, so that until then nobody else is given it.
   */
  claim(kind: string, now: Date, lease_s: number, surfaces?: readonly string[]): Promise<readonly Due[]>
  /** Puts it off, unless somebody else has changed since when it is due; its tries begin anew where it was done for now. */
  later(taken: Pick<Due, 'id' | 'dueAt' | 'tries'>, dueAt: Date, isDone?: 'done for now'): Promise<void>
  /** Other content, and another time, also of what was done. */
  put(work: NewDue): Promise<void>
  /** Marks it: its content goes, and whose it was. */
  done(id: string, now: Date): Promise<void>
}
