// What a sign in the values of a sentence is: it says which command is meant.

import type { Candidate } from '../../candidates/sentence/candidate.ts'
import type { CommandWords } from '../../sentence/vocabulary.ts'

export interface Sentence {
  readonly text: string
  readonly values: readonly Candidate[]
  /** The pack that is told with its capacity. */
  readonly pack: Candidate['pack']
}

/** Where it holds, `meant` takes what else goes to those it takes from. */
export interface Sign {
  readonly meant: (command: CommandWords) => boolean
  readonly from: (command: CommandWords) => boolean
  readonly holds: (sentence: Sentence, meant: CommandWords) => boolean
  /** Nor does the handbook answer it. */
  readonly isNoWords?: true
}

export const takes = ({ options }: CommandWords, ...names: readonly string[]): boolean =>
  names.every(name => options.some(option => option.name === name))

/** What one charge of one pack asks about. */
export const isOfOne = (command: CommandWords): boolean =>
  takes(command, 'pack', 'charger', 'current') && !takes(command, 'count')
