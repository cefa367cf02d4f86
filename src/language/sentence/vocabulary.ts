// What the question reader knows of the commands: their names, their options and the plain words that mean them.

export interface OptionWords {
  readonly name: string
  /** The kind of its value ("pack", "current", …): values of a sentence are matched to options by name, then by kind. */
  readonly kind: string
  readonly required: boolean
}

export interface CommandWords {
  /** One or two lower-case words. */
  readonly name: string
  readonly options: readonly OptionWords[]
  /** Of each of these one at least must be told; the first is asked for. */
  readonly anyOf?: readonly (readonly string[])[] | undefined
  /** Where no type of cell is told it is about all of them: none is taken for granted. */
  readonly everyType?: boolean | undefined
  /** Whether these options, where another command (by its name) lacks a pack, are all that a question for this one takes. */
  readonly alone?: ((options: Readonly<Record<string, string>>, instead: string) => boolean) | undefined
  /** It changes what is stored. */
  readonly changes?: boolean | undefined
}

export type Vocabulary = readonly CommandWords[]
