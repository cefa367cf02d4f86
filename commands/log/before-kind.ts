// Where a pack stood before a charge that is noted: as everywhere, but that empty is after a full discharge.

import type { Level } from '../../src/charging/things/level.ts'
import { plainText } from '../../src/ground/plain-text.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { stateKind } from '../../src/language/kinds/values.ts'

const emptied: Level = { kind: 'soc', soc: 0 }

/** Whether it was emptied to measure it, not landed. */
export const isEmptied = (level: Level): boolean => level.kind === 'soc' && level.soc === 0

export const beforeKind: ValueKind<Level> = {
  ...stateKind,
  read: (text, earlier) =>
    /^(?:empty|emptied|flat)$/i.test(plainText(text)) ? { value: emptied, assumed: [] } : stateKind.read(text, earlier),
  write: level => (isEmptied(level) ? 'empty' : stateKind.write(level)),
}
