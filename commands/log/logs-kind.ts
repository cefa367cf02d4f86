// The saved packs whose own charges an answer goes by, as they stand in a question that is asked again.

import { kitNameKind } from '../../src/assistant/kit/kit-name.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'

export const logsKind: ValueKind<readonly string[]> = {
  name: 'logs',
  example: 'wren',
  read: (text, earlier) => ({ value: text.split(',').map(name => kitNameKind.read(name, earlier).value), assumed: [] }),
  write: names => names.join(', '),
  complete: () => [],
}
