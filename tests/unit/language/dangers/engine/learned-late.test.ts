// A pattern that is read after a text was: the words that it brings are found from then on.

import { expect, it } from 'vitest'
import { Lexicon } from '../../../../../src/language/dangers/engine/lexicon.ts'
import { Index } from '../../../../../src/language/dangers/engine/matcher.ts'
import { wordsOf } from '../../../../../src/language/dangers/engine/words.ts'

it('finds words that a text had before a pattern named them', () => {
  const lexicon = new Lexicon({ fire: 'smoke' }, new Set())
  const mark = (text: string) => lexicon.mark(wordsOf(text), ({ words }) => words.map(() => false))
  mark('we looked again')
  const index = new Index<string>()
  index.add(lexicon.pattern('looked again'), 'looked')
  expect(index.find(mark('we looked again'))).toMatchObject([{ what: 'looked', from: 1, to: 3 }])
})
