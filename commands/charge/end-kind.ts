// Where a charge ends: at a current, or at a share of the one that is set.

import type { ChargeEnd } from '../../src/charging/things/charge-end.ts'
import { plainText } from '../../src/ground/plain-text.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { currentKind } from '../../src/language/kinds/values.ts'

const shareWord = /^(?:an? )?(tenth|twentieth)(?: of the (?:set )?current)?$/i

export const endKind: ValueKind<number | ChargeEnd> = {
  ...currentKind,
  read: (text, earlier) => {
    const share = shareWord.exec(plainText(text))?.[1]?.toLowerCase()
    return share ? { value: share as ChargeEnd, assumed: [] } : currentKind.read(text, earlier)
  },
  write: end => (typeof end === 'string' ? `a ${end}` : currentKind.write(end)),
}
