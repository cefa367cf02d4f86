// What both ways into Discord need.

import type { Draw } from '../../assistant/draw.ts'
import type { Assistant } from '../../assistant/running/assistant.ts'
import type { QuestionMemory } from '../../memory/memory.ts'
import type { Log } from '../../program/log.ts'

export interface DiscordParts {
  readonly assistant: Assistant
  readonly questions: QuestionMemory
  readonly draw: Draw
  readonly log: Log
  /** Where Discord's REST API is, without its version: https://discord.com/api */
  readonly api: string
  /** How long an answer may take before it is promised instead; two seconds when absent. */
  readonly patience_ms?: number
}
