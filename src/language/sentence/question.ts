// A question: a command and its details, as `time pack: 3S 720 LiHV from: 3.7V` has them.

/** The options hold text as typed; the command's own readers make values of it. */
export interface Question {
  readonly command: string
  readonly options: Readonly<Record<string, string>>
  /** Words of a question that the answer does not rest on, to be said out loud. */
  readonly notUsed?: readonly string[] | undefined
}

/** Canonical text; reading it gives the same question, where no value has the form of `name: value` itself. */
export function writeQuestion({ command, options }: Question): string {
  return [command, ...Object.entries(options).map(([name, value]) => `${name}: ${value}`)].join(' ')
}
