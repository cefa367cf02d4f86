// All rules of told dangers.

import { dangerNamed } from '../../../charging/situation/dangers.ts'
import type { DangerRule } from './rule.ts'
import file from './rules.json' with { type: 'json' }

export const rules: readonly DangerRule[] = file.rules.map(rule => ({ ...rule, danger: dangerNamed(rule.danger) }))
