// What the Matrix surface is made of.

import type { Draw } from '../../assistant/draw.ts'
import type { Assistant } from '../../assistant/running/assistant.ts'
import type { AnsweredMemory } from '../../memory/memory.ts'
import type { Log } from '../../program/log.ts'
import type { MatrixSettings } from './settings.ts'

export interface MatrixParts {
  readonly settings: MatrixSettings
  /** Where the session and the message keys are kept. */
  readonly folder: string
  readonly assistant: Assistant
  readonly answered: AnsweredMemory
  readonly draw: Draw
  readonly log: Log
}
