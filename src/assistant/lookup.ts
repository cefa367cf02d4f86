// What a question looks up besides its own words: the club's rules, saved names, answers. It waits a moment for them and
// does without where the memory is away: then the rules hold that were known last.

import type { Learned } from '../charging/things/learned.ts'
import type { Text } from '../ground/text.ts'
import { patiently } from '../ground/within.ts'
import type { Question } from '../language/sentence/question.ts'
import type { HouseRules, Memory } from '../memory/memory.ts'
import { faultOfMemory } from '../memory/memory-error.ts'
import type { FaultListener } from './fault-listener.ts'

/** The rules that each community was last known to have; none is not kept. */
export type KnownRules = Map<string, HouseRules>

export interface Lookup {
  /** The memory, where it lacks nothing that is read around a question. */
  readonly memory: Memory
  /** Something could not be looked up. */
  missed(): boolean
  /** More was looked up than the rules: what the club or one person calls its things. */
  isPersonal(): boolean
  /** These are the rules of a community from now on. */
  know(community: string, rules: HouseRules): void
}

/** For all that one question looks up, together. */
const patience_ms = 500
/** For each, also where reading the question took its time. */
const least_ms = 100

/** Undefined also where the memory is away, or takes its time. */
export async function lookedUp<T>(
  reading: Promise<T>,
  within_ms: number = patience_ms,
  onAway: (fault: unknown) => void = () => {},
): Promise<T | undefined> {
  try {
    return await patiently(within_ms, reading)
  } catch (fault) {
    if (faultOfMemory(fault) === undefined) throw fault
    onAway(fault)
    return undefined
  }
}

export function createLookup(memory: Memory, known: KnownRules, onFault: FaultListener): Lookup {
  const until_ms = performance.now() + patience_ms
  const rules = new Map<string, Promise<HouseRules>>()
  let missed = false
  let isPersonal = false

  async function or<T extends object>(absent: () => T, read: () => Promise<T>): Promise<T> {
    if (missed) return absent()
    const left_ms = Math.max(least_ms, until_ms - performance.now())
    const found = await lookedUp(read(), left_ms, fault => onFault(fault, 'looking up names and rules'))
    missed = found === undefined
    return found ?? absent()
  }
  const list = <T>(read: () => Promise<readonly T[]>): Promise<readonly T[]> => {
    isPersonal = true
    return or(() => [], read)
  }

  /** What comes too late for this question is known to the next, unless they were changed meanwhile. */
  async function rulesOf(community: string): Promise<HouseRules> {
    const before = known.get(community)
    const rules = await memory.house.rules(community)
    if (known.get(community) === before) know(community, rules)
    return rules
  }

  function know(community: string, rules: HouseRules): void {
    if (Object.keys(rules).length > 0) known.set(community, rules)
    else known.delete(community)
  }

  /** Read once for a question. */
  function rulesOnce(community: string): Promise<HouseRules> {
    const found =
      rules.get(community) ??
      or(
        () => known.get(community) ?? {},
        () => rulesOf(community),
      )
    rules.set(community, found)
    return found
  }

  const { house, kit, answers, log } = memory
  return {
    missed: () => missed,
    isPersonal: () => isPersonal,
    know,
    memory: {
      ...memory,
      house: { ...house, rules: rulesOnce },
      kit: {
        ...kit,
        find: (...of) => list(() => kit.find(...of)),
        startingWith: (...of) => list(() => kit.startingWith(...of)),
      },
      answers: {
        ...answers,
        list: community => list(() => answers.list(community)),
        asking: (...of) => list(() => answers.asking(...of)),
      },
      log: { ...log, of: (...of) => list(() => log.of(...of)) },
    },
  }
}

/** Options as they would be typed, and where they come from, to be said out loud. */
export interface Recalled {
  readonly options: Readonly<Record<string, string>>
  readonly assumed: readonly Text[]
  readonly learned?: readonly Learned[]
  /** What they answer better by another question. */
  readonly instead?: Question
}
