// All rules of told dangers.

import { charger } from './charger.ts'
import { emergency } from './emergency.ts'
import { handling } from './handling.ts'
import { minding } from './minding.ts'
import { place } from './place.ts'
import type { DangerRule } from './rule.ts'
import { unsound } from './unsound.ts'
import { warmth } from './warmth.ts'

export const rules: readonly DangerRule[] = [
  ...emergency,
  ...unsound,
  ...warmth,
  ...minding,
  ...place,
  ...charger,
  ...handling,
]
