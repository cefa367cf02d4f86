// How far a denial, the past and a person reach.

import { expect, test } from 'vitest'
import { Lexicon } from '../../../../../src/language/dangers/engine/lexicon.ts'
import { Scope } from '../../../../../src/language/dangers/engine/scope.ts'
import { wordsOf } from '../../../../../src/language/dangers/engine/words.ts'

const lexicon = new Lexicon(
  {
    deny: 'not, no, never, nor, or, neither, dont, cant, without',
    noDenial: 'no problem, not a worry',
    turns: 'but, so',
    asksAnywhere: 'why',
    asks: 'why, may, can',
    once: 'long ago, before',
    gone: 'thrown, went .2 away',
    person: 'me, dog',
    sitsThere: 'pack, it',
  },
  new Set(),
)
const scope = new Scope(lexicon)
const marked = (text: string) => lexicon.mark(wordsOf(text), marked => scope.deniers(marked))

/** What is said of the word `smoke` of a text. */
function smokeIn(text: string) {
  const all = marked(text)
  const from = all.words.findIndex(({ w }) => w === 'smoke')
  const found = { what: 0, from, to: from + 1 }
  return { found, all }
}

test.each<readonly [text: string, deniers: string]>([
  ['not any smoke', 'not'],
  ['no problem with smoke', ''],
  ['not a worry, no smoke', 'no'],
  // Two lift each other, in a clause and near enough; but "no, nor" and "never" add up.
  ['dont say without smoke', ''],
  ['dont a b c d e f without', ''],
  ['dont a b c d e f g without', 'dont without'],
  ['dont say, without smoke', 'dont without'],
  ['dont say but without smoke', 'dont without'],
  ['dont say no smoke', 'dont no'],
  ['dont say nor smoke', 'dont nor'],
  ['dont say or smoke', 'dont or'],
  ['dont say neither smoke', 'dont neither'],
  ['dont say never smoke', 'dont never'],
  ['dont say without smoke not', 'not'],
  // A question for leave or a reason.
  ['why not smoke', ''],
  ['x why not smoke', ''],
  ['why a b c not smoke', ''],
  ['why a b c d not smoke', 'not'],
  ['why, not smoke', 'not'],
  ['may not smoke', ''],
  ['x may not smoke', 'not'],
  ['and may not smoke', ''],
  ['x, may not smoke', ''],
  ['cant i smoke', ''],
  ['cant you smoke', 'cant'],
  ['so cant i smoke', 'cant'],
  ['never i smoke', 'never'],
])('denies: %s', (text, deniers) => {
  const { words, denies } = marked(text)
  expect(
    words
      .filter((_, at) => denies[at])
      .map(({ w }) => w)
      .join(' '),
  ).toBe(deniers)
})

test.each<readonly [text: string, is: boolean]>([
  ['no smoke', true],
  ['no a b c d e f g h smoke', true],
  ['no a b c d e f g h i smoke', false],
  ['no, smoke', false],
  ['no. smoke', false],
  ['no but smoke', false],
  ['not fire and smoke', true],
  ['not fire and white smoke', true],
  ['not fire and more white smoke', false],
  ['smoke not', false],
  ['smoke', false],
])('denied: %s: %s', (text, is) => {
  const { found, all } = smokeIn(text)
  expect(scope.isDenied(found, all)).toBe(is)
})

test.each<readonly [text: string, is: boolean]>([
  ['long ago smoke', true],
  ['smoke long ago', true],
  ['since long ago smoke', false],
  ['long ago, smoke', false],
  ['smoke, long ago', false],
  ['long ago. smoke', false],
  ['smoke. long ago', false],
  ['smoke x. long ago', false],
  ['thrown, smoke', true],
  ['smoke, thrown', true],
  ['thrown. smoke', false],
  ['smoke. thrown', false],
  ['not thrown, smoke', false],
  ['smoke, not thrown', false],
  ['smoke, it went far away', true],
  [`thrown ${'x '.repeat(39)}smoke`, true],
  [`thrown ${'x '.repeat(40)}smoke`, false],
  [`smoke ${'x '.repeat(40)}thrown`, true],
  [`smoke ${'x '.repeat(41)}thrown`, false],
  ['smoke', false],
])('past: %s: %s', (text, is) => {
  const { found, all } = smokeIn(text)
  expect(scope.isPast(found, all)).toBe(is)
})

test.each<readonly [text: string, is: boolean]>([
  ['me smoke', true],
  ['the dog may smoke', true],
  ['pack smoke', false],
  ['me pack smoke', false],
  ['pack me smoke', true],
  ['pack beside me smoke', false],
  ['pack with me smoke', false],
  ['me. x smoke', false],
  ['me, smoke', true],
  ['the esc is smoke', true],
  ['the esc is there, smoke', true],
  ['x. the esc is there smoke', true],
  ['x. the esc there smoke', false],
  ['the esc that is smoke', false],
  ['the esc which are smoke', false],
  ['is smoke', false],
  ['x, is smoke', false],
  [`me ${'x '.repeat(11)}smoke`, true],
  [`me ${'x '.repeat(12)}smoke`, false],
])('of a person or a thing: %s: %s', (text, is) => {
  const { found, all } = smokeIn(text)
  expect(scope.isOfPerson(found, all)).toBe(is)
})
