// Reminders that people have set.

import type { Due } from './due.ts'

export interface Reminder {
  readonly id: string
  /** What its person calls it by; shared by the reminders that were set together. */
  readonly code: string
  readonly person: string
  /** Where it was set. */
  readonly place: string
  readonly channel: 'here' | 'direct'
  /** `stay`: are you still with it; `end`: check whether it has ended. */
  readonly kind: 'stay' | 'end'
  /** The time question that it is for, in canonical notation; empty where only a delay was given. */
  readonly about: string
  readonly setAt: Date
  readonly dueAt: Date
  /** The charge may need from `low_s` to `high_s` after `setAt`. */
  readonly low_s: number
  readonly high_s: number
  /** By whose clock it was set, where one was known. */
  readonly zone?: string | undefined
}

/** They are due as work of the kind `reminder`. */
export interface ReminderMemory {
  /** All of them or, where the person would then have more than `most` to come, none. */
  add(reminders: readonly Reminder[], most: number): Promise<'set' | 'full'>
  /** In the order in which they come. */
  of(person: string): Promise<readonly Reminder[]>
  /** Those of the code, all where absent; gives how many there were. */
  cancel(person: string, code?: string): Promise<number>
}

/** From what is due. */
export function reminderFrom({ id, person, place, body }: Due): Reminder {
  const told = body as Omit<Reminder, 'id' | 'person' | 'place'>
  return { ...told, id, person, place, setAt: new Date(told.setAt), dueAt: new Date(told.dueAt) }
}
