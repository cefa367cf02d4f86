// What the Matrix surface is made of.

import type { Turn } from '../../assistant/occasion.ts'
import type { Assistant } from '../../assistant/running/assistant.ts'
import type { Chart } from '../../charts/chart.ts'
import type { AnsweredMemory } from '../../memory/memory.ts'
import type { Log } from '../../program/log.ts'
import type { MatrixSettings } from './settings.ts'

export interface MatrixParts {
  readonly settings: MatrixSettings
  /** Where the session and the message keys are kept. */
  readonly folder: string
  readonly assistant: Assistant
  readonly answered: AnsweredMemory
  /** Draws a chart as PNG. */
  readonly draw: (chart: Chart, turn: Turn) => Promise<Uint8Array>
  readonly log: Log
}
