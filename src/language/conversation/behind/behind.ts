// A message behind a question of the same asker, with all that a way of going on looks at.

import type { Frame } from '../../frames/frame.ts'
import type { Choice, Said } from '../../reading/choose.ts'
import type { CommandWords } from '../../sentence/vocabulary.ts'

export interface Behind extends Omit<Said, 'lentTo' | 'inHandbook'> {
  readonly frame: Frame
  /** What it is read as by itself. */
  readonly other?: Choice | undefined
}

/** What the message makes of the question before, whose command it is given; undefined where it goes on in another way. */
export type Way = (behind: Behind, command: CommandWords) => Choice | undefined
