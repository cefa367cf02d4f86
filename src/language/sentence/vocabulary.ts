// What the question reader knows of the commands: their names, their options and the plain words that mean them.

export interface OptionWords {
  readonly name: string
  /** The kind of its value ("pack", "current", …): plain words are matched to options by name, then by kind. */
  readonly kind: string
  readonly required: boolean
  /** Phrases that stand for a value of it in a plain sentence, in lower case, each with the value. */
  readonly spoken?: Readonly<Record<string, string>>
}

export interface CommandWords {
  /** One or two lower-case words. */
  readonly name: string
  readonly options: readonly OptionWords[]
}

export type Vocabulary = readonly CommandWords[]
