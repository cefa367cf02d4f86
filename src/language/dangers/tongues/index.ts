// The dangers that matter most, in other tongues: told whatever language the rest of the text is in.

import type { DangerRule } from '../rules/rule.ts'
import { german } from './de.ts'
import { spanish } from './es.ts'
import { french } from './fr.ts'
import { italian } from './it.ts'
import { dutch } from './nl.ts'

export const foreignRules: readonly DangerRule[] = [...german, ...french, ...spanish, ...dutch, ...italian]
