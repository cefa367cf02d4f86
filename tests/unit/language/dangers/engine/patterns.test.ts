// Patterns over words: what each part of one finds, and where it ends.

import { expect, test } from 'vitest'
import { Lexicon } from '../../../../../src/language/dangers/engine/lexicon.ts'
import { Index } from '../../../../../src/language/dangers/engine/matcher.ts'
import { wordsOf } from '../../../../../src/language/dangers/engine/words.ts'

const newLexicon = () =>
  new Lexicon(
    {
      stop: 'halt, =ends',
      pack: 'pack, lipo, li po',
      mine: 'my @pack, our .1 @pack',
      both: '@pack, @stop',
      deny: 'not',
    },
    new Set(),
  )

/** Where a pattern stands in a text: its first and last word each. */
function found(pattern: string, text: string): string[] {
  const lexicon = newLexicon()
  const index = new Index<string>()
  index.add(lexicon.pattern(pattern), pattern)
  const words = wordsOf(text)
  const deny = lexicon.concept('deny')
  const marked = lexicon.mark(words, ({ signs }) => signs.map(ids => ids.has(deny)))
  return index.find(marked).map(({ from, to }) =>
    words
      .slice(from, to)
      .map(({ w }) => w)
      .join(' '),
  )
}

test.each<readonly [pattern: string, text: string, ...found: string[]]>([
  // Words, exactly or in any form, or only their beginning; one slip of the finger is let pass.
  ['smoke', 'it smoked, smokes', 'smoked', 'smokes'],
  ['=smoke', 'it smoked, smoke', 'smoke'],
  ['smoulder*', 'it smoulders', 'smoulders'],
  ['charger', 'my chager', 'chager'],
  ['=ends', 'it ends', 'ends'],
  // One of several, and one that may be missing.
  ['smoke|puff', 'a puff of smoke', 'puff', 'smoke'],
  ['white puff? smoke', 'white smoke, white puff smoke', 'white smoke', 'white puff smoke'],
  ['white smoke puff?', 'white smoke puff', 'white smoke puff'],
  ['white smoke', 'white, smoke'],
  ['white smoke', 'white. smoke'],
  // Gaps, within the sentence or across, up to what denies.
  ['white .2 smoke', 'white x x smoke', 'white x x smoke'],
  ['white .2 smoke', 'white x x x smoke'],
  ['white .2 smoke', 'white, x smoke', 'white x smoke'],
  ['white .2 smoke', 'white. x smoke'],
  ['white :2 smoke', 'white. x smoke', 'white x smoke'],
  ['white .2 smoke', 'white smoke smoke', 'white smoke'],
  ['white .2 smoke', 'white not smoke'],
  ['white .2 not', 'white x not', 'white x not'],
  // What may not follow.
  ['smoke !white', 'smoke white'],
  ['smoke !white', 'smoke black', 'smoke'],
  ['smoke !white', 'smoke', 'smoke'],
  ['smoke !white', 'smoke. white', 'smoke'],
  ['smoke !white', 'smoke, white'],
  ['smoke !@mine', 'smoke my pack'],
  // Numbers.
  ['# seen', '3 seen', '3 seen'],
  ['# seen', 'three seen'],
  ['#<3 seen', '3 seen', '3 seen'],
  ['#<3 seen', '3.1 seen'],
  ['#>3 seen', '3 seen', '3 seen'],
  ['#>3 seen', '2.9 seen'],
  ['#3-5 seen', '5 seen', '5 seen'],
  ['#3-5 seen', '5.1 seen'],
  ['#3-5 seen', '2.9 seen'],
  ['#3-5 seen', 'x seen'],
  // Concepts, of words, of sequences, and of other concepts.
  ['@pack', 'my li po', 'li po'],
  ['@mine', 'my li po, our old pack', 'my li po', 'our old pack'],
  ['@mine smoke', 'my pack smoke', 'my pack smoke'],
  ['@both', 'halt the lipo', 'halt', 'lipo'],
  ['white @mine', 'white my pack', 'white my pack'],
  ['@pack|@stop seen', 'lipo seen, ends seen', 'lipo seen', 'ends seen'],
  ['@pack|lipo', 'lipo', 'lipo'],
  ['a b', 'a a b', 'a b'],
  ['smoke', ''],
])('%s in "%s"', (pattern, text, ...where) => expect(found(pattern, text)).toEqual(where))

test.each([
  ['@none', 'No concept @none'],
  ['smoke? white', 'A pattern begins with a word: smoke? white'],
  ['.2 white', 'A pattern begins with a word: .2 white'],
  ['!white smoke', 'A pattern begins with a word: !white smoke'],
])('%s is no pattern', (pattern, message) => expect(() => newLexicon().pattern(pattern)).toThrow(message))

test('a concept that is not there is a fault', () => {
  const lexicon = newLexicon()
  lexicon.pattern('smoke|smoulder*')
  expect(() => lexicon.concept('none')).toThrow('No concept @none')
  expect(lexicon.listed()).toContain('smoked')
  expect(lexicon.listed()).not.toContain('smoulder*')
})
