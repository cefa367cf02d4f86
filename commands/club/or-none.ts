// A rule that can be lifted.

import { lifted } from '../../src/assistant/naming/told-rules.ts'
import { startingWith, type ValueKind } from '../../src/language/kinds/value-kind.ts'

/** A value of the kind, or "none" to lift the rule. */
export function orNone<T>(kind: ValueKind<T>, name = kind.name): ValueKind<T | null> {
  return {
    ...kind,
    name,
    read: (text, earlier) =>
      text.trim().toLowerCase() === lifted ? { value: null, assumed: [] } : kind.read(text, earlier),
    write: value => (value === null ? lifted : kind.write(value)),
    complete: prefix => [...kind.complete(prefix), ...startingWith([lifted])(prefix)],
  }
}
