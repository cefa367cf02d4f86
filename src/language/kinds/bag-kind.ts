// An option that takes several packs, each with its mass where that counts.

import { type Bag, bagRules, readBag, writeBag } from '../things/weighed.ts'
import { startingWith, type ValueKind } from './value-kind.ts'

export const bagKind: ValueKind<Bag> = {
  name: 'packs',
  example: bagRules.example,
  read: readBag,
  write: writeBag,
  complete: startingWith([bagRules.example]),
}
