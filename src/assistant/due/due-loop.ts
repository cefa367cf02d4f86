// Does what is due: each piece of work once, by one replica, tried again until it is done or too late.

import type { Due, DueMemory } from '../../memory/due.ts'
import type { FaultListener } from '../fault-listener.ts'

export interface Doing {
  /** Where it can be done now; anywhere where absent. */
  readonly surfaces?: () => readonly string[]
  /**
   * Undefined when it is done. Else when it is due again, or why it never will be done. Rejects where it is worth
   * another try.
   */
  work(due: Due, now: Date): Promise<undefined | { readonly again: Date } | { readonly givenUp: string }>
  /** Told of what came too late. */
  late?(due: Due): void
  /** At the start: makes due what is to be done from then on. */
  begin?(now: Date): Promise<unknown>
}

interface DueParts {
  readonly due: DueMemory
  readonly clock: () => Date
  readonly onFault: FaultListener
}

export interface DueLoop {
  /** To be called once. Never throws. */
  begin(): Promise<void>
  /** Does all that is due now, of one kind where that is named. Never throws. */
  strike(kind?: string): Promise<void>
}

/** Long enough for a platform that answers slowly, short enough that a crash delays nothing for long. */
const lease_s = 120
/** Another try after so long, then twice as long each time. */
const firstPause_s = 10
const longestPause_s = 1800

/** `doings` by kind of work. */
export function createDueLoop(doings: Readonly<Record<string, Doing>>, { due, clock, onFault }: DueParts): DueLoop {
  /** Slow work may outlast its lease: we do not start it twice ourselves. */
  const underway = new Map<string, Promise<void>>()

  async function take(taken: Due, doing: Doing): Promise<void> {
    const { id, kind } = taken
    const before = underway.get(id)
    const working = before
      ? // It was made due anew meanwhile: where it still waits then, it is taken again.
        before.then(() => due.later(taken, clock()))
      : attempt(taken, doing).finally(() => underway.delete(id))
    if (!before) underway.set(id, working)
    await working.catch(fault => onFault(fault, kind))
  }

  async function attempt(taken: Due, { work, late }: Doing): Promise<void> {
    const { id, kind, latestAt, tries } = taken
    try {
      const now = clock()
      const isLate = latestAt !== undefined && now > latestAt
      const outcome = isLate ? late?.(taken) : await work(taken, now)
      if (outcome && 'again' in outcome) return await due.later(taken, outcome.again, 'done for now')
      if (outcome) onFault(new Error(outcome.givenUp), `${kind} given up`)
      await due.done(id, clock())
    } catch (fault) {
      onFault(fault, kind)
      const pause_s = Math.min(longestPause_s, firstPause_s * 2 ** (tries - 1))
      // Where this fails too it comes again when its lease is over.
      await due.later(taken, new Date(clock().getTime() + pause_s * 1000)).catch(() => {})
    }
  }

  async function strikeOne(kind: string, doing: Doing): Promise<void> {
    try {
      const claim = () => due.claim(kind, clock(), lease_s, doing.surfaces?.())
      for (let taken = await claim(); taken.length > 0; taken = await claim())
        await Promise.all(taken.map(one => take(one, doing)))
    } catch (fault) {
      onFault(fault, `looking for what is due: ${kind}`)
    }
  }

  const all = Object.entries(doings)
  return {
    begin: async () => {
      const begun = await Promise.allSettled(all.map(([, doing]) => doing.begin?.(clock())))
      for (const one of begun) if (one.status === 'rejected') onFault(one.reason, 'making due what is always done')
    },
    strike: async only => {
      const some = all.filter(([kind]) => kind === (only ?? kind))
      await Promise.all(some.map(([kind, doing]) => strikeOne(kind, doing)))
    },
  }
}
