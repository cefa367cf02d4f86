// A sentence as the relations see it.

import { lexicon, ready } from '../../../../../src/language/dangers/reader.ts'
import { type Told, toldOf } from '../../../../../src/language/dangers/relations/relation.ts'
import { valuesOf } from '../../../../../src/language/dangers/relations/values.ts'

export function told(text: string): Told {
  const marked = ready.mark(text)
  return toldOf(marked, valuesOf(marked.words), lexicon)
}
