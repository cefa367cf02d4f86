// An assistant of some commands on an empty memory, and people to ask it.

import type { Noticeboards } from '../../src/assistant/cards/noticeboard.ts'
import type { Entry } from '../../src/assistant/command.ts'
import type { Occasion } from '../../src/assistant/occasion.ts'
import type { Reply } from '../../src/assistant/reply.ts'
import { type Assistant, createAssistant } from '../../src/assistant/running/assistant.ts'
import type { Memory } from '../../src/memory/memory.ts'
import { openTestMemory } from './test-memory.ts'

export interface Asking {
  readonly assistant: Assistant
  readonly memory: Memory
  /** Faults of the program itself; a test ends with none. */
  readonly faults: readonly unknown[]
  ask(question: string, occasion?: Occasion): Promise<Reply>
}

export interface AskingParts {
  readonly memory?: Memory
  readonly clock?: () => Date
  readonly newSeed?: () => number
  readonly noticeboard?: Noticeboards
}

export async function askingOf(commands: readonly Entry[], { memory, ...parts }: AskingParts = {}): Promise<Asking> {
  const kept = memory ?? (await openTestMemory())
  const faults: unknown[] = []
  const assistant = createAssistant({ ...parts, commands, memory: kept, onFault: fault => faults.push(fault) })
  return { assistant, memory: kept, faults, ask: (question, by = member) => assistant.answer(question, by) }
}

/** A member of the club, in the club's channel. */
export const member: Occasion = {
  surface: 'room',
  asker: { id: 'room:wim', name: 'Wim', moderates: false },
  community: { id: 'room:heron-meadow', name: 'Heron Meadow Electric Flyers' },
  place: { id: 'room:bench-talk', direct: false },
}

export const otherMember: Occasion = { ...member, asker: { id: 'room:ines', name: 'Ines', moderates: false } }

export const moderator: Occasion = { ...member, asker: { id: 'room:odile', name: 'Odile', moderates: true } }
