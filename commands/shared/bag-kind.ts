// An option that takes several packs, each with its mass where that counts.

import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { type Bag, bagRules, readBag, writeBag } from '../../src/language/things/weighed.ts'

export const bagKind: ValueKind<Bag> = {
  name: 'packs',
  example: bagRules.example,
  read: readBag,
  write: writeBag,
  complete: prefix =>
    bagRules.example.toLowerCase().startsWith(prefix.trim().toLowerCase()) ? [bagRules.example] : [],
}
