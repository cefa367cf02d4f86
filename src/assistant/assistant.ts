// The assistant as a surface sees it: ask, and get a reply; and what a surface must be.

import { noHouseLimits } from '../charging/limits.ts'
import type { Question } from '../notation/question.ts'
import type { Command } from './command.ts'
import type { Occasion } from './context.ts'
import { dispatch, type FaultListener } from './dispatch.ts'
import { createRegistry, type Registry } from './registry.ts'
import type { Reply } from './reply.ts'
import { showIn } from './show.ts'

export interface Assistant {
  readonly registry: Registry
  /** Always gives a reply, never throws. */
  answer(question: string | Question, occasion: Occasion): Promise<Reply>
}

/** A way in for questions: a chat platform, or the room. */
export interface Surface {
  readonly name: string
  /** Resolves when questions can come; rejects where the platform will not have us. */
  start(): Promise<void>
  /** Takes no new questions, finishes the answers in flight, then resolves. */
  stop(): Promise<void>
  ready(): boolean
}

export interface AssistantParts {
  readonly commands: readonly Command[]
  readonly onFault: FaultListener
  /** Absent where no clock is known. */
  readonly clock?: () => Date
}

export function createAssistant({ commands, onFault, clock }: AssistantParts): Assistant {
  const registry = createRegistry(commands)
  return {
    registry,
    answer: (question, occasion) =>
      dispatch(
        registry,
        question,
        async () => ({
          ...occasion,
          house: noHouseLimits,
          show: showIn('.'),
          ...(clock ? { now: clock() } : {}),
        }),
        onFault,
      ),
  }
}
