// The assistant on its memory, as every way in needs it.

import { commands } from '../../commands/index.ts'
import { createNoticeboards, type Noticeboards } from '../assistant/cards/noticeboard.ts'
import type { Ways } from '../assistant/due/inbox.ts'
import { type Assistant, type AssistantParts, createAssistant } from '../assistant/running/assistant.ts'
import { createRounds, type Rounds } from '../assistant/running/rounds.ts'
import type { Memory } from '../memory/memory.ts'
import type { MemoryPlace } from '../memory/opening/connect.ts'
import { openMemory } from '../memory/opening/open.ts'
import { describeError, type Log } from './log.ts'

export interface Opened {
  readonly assistant: Assistant
  readonly memory: Memory
  /** Empty: the platforms add their boards. */
  readonly noticeboard: Noticeboards
  /** Empty: the surfaces add theirs. */
  readonly ways: Ways
  /** Not started. */
  readonly rounds: Rounds
}

/** Throws a MemoryError where the data folder or the database cannot be used. */
export async function openAssistant(
  place: MemoryPlace,
  log: Log,
  { plan }: Pick<AssistantParts, 'plan'> = {},
): Promise<Opened> {
  const memory = await openMemory(place)
  const knownRules = await memory.house.everyones()
  const noticeboard = createNoticeboards()
  const ways: Ways = new Map()
  const parts = {
    noticeboard,
    ways,
    clock: () => new Date(),
    onFault: (fault: unknown, reference: string) =>
      log.error({ reference, fault: describeError(fault) }, 'a question failed'),
  }
  const assistant = createAssistant({ ...parts, commands, memory, knownRules, plan })
  const learnRules = async () => {
    // SQLite has no other replica that could have set any.
    if (!place.databaseUrl) return
    try {
      for (const [community, rules] of await memory.house.everyones()) knownRules.set(community, rules)
    } catch (fault) {
      parts.onFault(fault, 'learning the rules of all communities')
    }
  }
  const rounds = createRounds({ assistant, learnRules })
  return { assistant, memory, noticeboard, ways, rounds }
}
