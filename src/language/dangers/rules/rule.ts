// What a rule of the dangers is.

import type { Danger } from '../../../charging/situation/dangers.ts'

export interface DangerRule {
  readonly danger: Danger
  /** Concepts of which one stands somewhere in the message, else the rule is silent. */
  readonly needs?: readonly string[]
  /** Patterns, with commas between: one that stands undenied tells the danger. */
  readonly tells?: string
  /** Patterns that only sound like it. */
  readonly hints?: string
  /** Patterns that, standing undenied anywhere in the message, say that it is not so. */
  readonly excuses?: string
  /** Of a danger that stays with the pack: told of a pack that is gone, or of long ago, it is none. */
  readonly passes?: boolean
  /** What it is said of stands before it: a person there (on the sofa) makes it none. */
  readonly ofThing?: boolean
}
