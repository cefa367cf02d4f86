// An option that takes several packs.

import type { ValueKind } from '../../src/assistant/value-kind.ts'
import { type BagItem, readBag, writeBag } from '../../src/notation/bag.ts'

const suggestions = ['4x 3S 720 LiHV 45g; 2x 4S 1500 LiPo 178g', '3S 720 LiHV 45g; 3S 850 LiPo 68g'] as const

export const bagKind: ValueKind<readonly BagItem[]> = {
  name: 'packs',
  example: suggestions[0],
  read: readBag,
  write: writeBag,
  complete: prefix => suggestions.filter(text => text.toLowerCase().startsWith(prefix.trim().toLowerCase())),
}
