// A message behind a question of the same asker, with all that a way of going on looks at.

import type { Candidate } from '../candidates/index.ts'
import type { Frame } from '../frames/frame.ts'
import type { Ranked } from '../model/index.ts'
import type { Choice, Reading } from '../reading/choose.ts'
import type { CommandWords, Vocabulary } from '../sentence/vocabulary.ts'

export interface Behind {
  readonly text: string
  readonly values: readonly Candidate[]
  readonly ranked: readonly Ranked[]
  readonly frame: Frame
  readonly vocabulary: Vocabulary
  readonly readBy: (command: CommandWords) => Reading
  /** What it is read as by itself. */
  readonly other?: Choice | undefined
}

/** What the message makes of the question before, whose command it is given; undefined where it goes on in another way. */
export type Way = (behind: Behind, command: CommandWords) => Choice | undefined
