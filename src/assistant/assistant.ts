// The assistant as a surface sees it: ask, and get a reply; and what a surface must be.

import type { Memory } from '../memory/memory.ts'
import type { Question } from '../notation/question.ts'
import type { Command } from './command.ts'
import type { Context, Occasion } from './context.ts'
import { dispatch, type FaultListener } from './dispatch.ts'
import { namesStartingWith } from './kit-names.ts'
import { createRegistry, type Registry } from './registry.ts'
import type { Reply } from './reply.ts'
import { showIn } from './show.ts'

export interface Assistant {
  readonly registry: Registry
  /** Always gives a reply, never throws. */
  answer(question: string | Question, occasion: Occasion): Promise<Reply>
  /** Up to 25 values for an option that start as `prefix` does: saved names first. Never throws. */
  complete(command: string, option: string, prefix: string, occasion: Occasion): Promise<readonly string[]>
  /** Whether the house lets this asker have an answer that only they see. */
  mayAskPrivately(occasion: Occasion): Promise<boolean>
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
  readonly memory: Memory
  readonly onFault: FaultListener
  /** Absent where no clock is known. */
  readonly clock?: () => Date
}

const mostCompletions = 25

export function createAssistant({ commands, memory, onFault, clock }: AssistantParts): Assistant {
  const registry = createRegistry(commands)
  const contextFor = async (occasion: Occasion): Promise<Context> => {
    const house = await memory.house.rules(occasion.community.id)
    return {
      ...occasion,
      house,
      show: showIn(house.decimalMark ?? '.'),
      memory,
      vocabulary: registry.vocabulary,
      ...(clock ? { now: clock() } : {}),
    }
  }
  return {
    registry,
    answer: (question, occasion) => dispatch(registry, question, () => contextFor(occasion), onFault),
    complete: async (command, option, prefix, occasion) => {
      const kind = commands.find(({ name }) => name === command)?.options[option]?.kind
      if (!kind) return []
      const names = await namesStartingWith(prefix, kind.name, mostCompletions, memory.kit, occasion).catch(
        fault => {
          onFault(fault, `completing ${option}`)
          return []
        },
      )
      return [...new Set([...names, ...kind.complete(prefix)])].slice(0, mostCompletions)
    },
    mayAskPrivately: async ({ asker, community }) =>
      asker.moderates || (await memory.house.rules(community.id)).privateAnswers !== 'moderators',
  }
}
