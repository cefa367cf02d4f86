// All concepts by name, each on those before it: lists of patterns with commas between, as `engine/pattern.ts` reads them.

import type { Concepts } from '../engine/lexicon.ts'
import file from './concepts.json' with { type: 'json' }

export const concepts: Concepts = file
