// Words of a text, where clauses and sentences end, the forms of a word, and slips of the finger.

import { expect, test } from 'vitest'
import { NearWords } from '../../../../../src/language/dangers/engine/near.ts'
import { formsOf, wordsOf } from '../../../../../src/language/dangers/engine/words.ts'

/** Each word as folded, behind `,` where a clause begins and `.` or `?` where a sentence does. */
const shown = (text: string): string =>
  wordsOf(text)
    .map(({ w, cut, asked }) => `${cut === 2 ? (asked ? '?' : '.') : cut === 1 ? ',' : ''}${w}`)
    .join(' ')

test.each<readonly [text: string, words: string]>([
  ['It IS puffed', '.it is puffed'],
  ['aufgebläht, groß, øl', '.aufgeblaht ,gross ,ol'],
  ["it isn't", '.it isnt'],
  ['’tis `so´', '.tis so'],
  ['one, two; three: four', '.one ,two ,three ,four'],
  ['one (two) three', '.one ,two ,three'],
  ['one – two — three - four', '.one ,two ,three ,four'],
  ['li-ion', '.li ion'],
  ['one/two|three*four', '.one ,two ,three ,four'],
  ['one “two” "three"', '.one ,two ,three'],
  ['one. two! three… four', '.one .two .three .four'],
  ['one\ntwo. \nthree', '.one ,two .three'],
  ['it isn´t', '.it isnt'],
  ['one? two', '.one ?two'],
  ['one? - two', '.one ?two'],
  ['one?! two three', '.one ?two three'],
  ['one. two?', '.one .two'],
  ['one? 2. three', '.one ?2 .three'],
  ['3.7V, 1,5A', '.3.7 v ,1,5 a'],
  ['80%', '.80 %'],
  ['20 °C and 20° and 20°cm', '.20 degrees and 20 degrees and 20 degrees cm'],
  ['20 °. 5', '.20 degrees .5'],
  ['38C outside, 38 C weather', '.38 degrees outside ,38 degrees weather'],
  ['outside is 30C', '.outside is 30 degrees'],
  ['1C in the shade, 30C pack', '.1 c in the shade ,30 c pack'],
  ['at -6 out', '.at ,minus 6 out'],
  ['at (-6 out', '.at ,minus 6 out'],
  ['-6 out', '.minus 6 out'],
  ['−6 out', '.minus 6 out'],
  ['10-12', '.10 12'],
  ['at -2.2 A', '.at ,2.2 a'],
  ['at -500', '.at ,500'],
  ['at -50 mah', '.at ,50 mah'],
  ['at -50 amperes', '.at ,minus 50 amperes'],
  ['minus 2 A', '.2 a'],
  ['minus 6 degrees', '.minus 6 degrees'],
  ['', ''],
])('%s', (text, words) => expect(shown(text)).toBe(words))

test('a number has its value, and each word its place', () => {
  expect(wordsOf('at 1,5 or 3.7 ok')).toMatchObject([
    { w: 'at', start: 0, end: 2 },
    { w: '1,5', value: 1.5, start: 3, end: 6 },
    { w: 'or', start: 7, end: 9 },
    { w: '3.7', value: 3.7, start: 10, end: 13 },
    { w: 'ok', start: 14, end: 16 },
  ])
  expect(wordsOf('a -6°')).toMatchObject([
    { start: 0 },
    { start: 2, end: 3 },
    { start: 3, end: 4 },
    { start: 4, end: 5 },
  ])
})

test.each<readonly [word: string, ...others: string[]]>([
  ['puff', 'puffs', 'puffed', 'puffing'],
  ['smoke', 'smokes', 'smoked', 'smoking'],
  ['stop', 'stops', 'stopped', 'stopping'],
  ['sweep', 'sweeps', 'sweeped', 'sweeping'],
  ['touch', 'touches', 'touched', 'touching'],
  ['push', 'pushes', 'pushed', 'pushing'],
  ['box', 'boxes', 'boxed', 'boxing'],
  ['buzz', 'buzzes', 'buzzed', 'buzzing'],
  ['hiss', 'hisses', 'hissed', 'hissing'],
  ['dry', 'drys', 'dryed', 'drying', 'dries', 'dried'],
  ['play', 'plays', 'played', 'playing'],
  ['die', 'dies'],
  ['puffed'],
  ['puffing'],
  ['puffs'],
  ['at'],
  ['li-po'],
])('forms of %s', (word, ...others) => expect(formsOf(word)).toEqual([word, ...others]))

const near = new NearWords(['balance', 'charger', 'lead', 'swollen'], new Set(['changer']))

test.each<readonly [typed: string, ...words: string[]]>([
  ['balnce', 'balance'],
  ['ballance', 'balance'],
  ['balamce', 'balance'],
  ['baalnce', 'balance'],
  ['balanec', 'balance'],
  ['balances', 'balance'],
  ['balanc', 'balance'],
  ['swolen', 'swollen'],
  ['baqlane'],
  ['baqlnce'],
  ['baaqnce'],
  ['balnec'],
  ['balaxyce'],
  ['blaance', 'balance'],
  ['aalance'],
  ['balecna'],
  ['balance'],
  ['changer'],
  ['charge', 'charger'],
  ['leadd'],
  ['charg'],
  ['x'.repeat(21)],
])('%s is one slip from %s', (typed, ...words) => expect(near.of(typed)).toEqual(words))

test('words under six letters are none that a slip leads to, and five typed letters may lack one', () => {
  const words = new NearWords(['puffed', 'mains', 'abcdefghijklmnopqrst'], new Set())
  expect([words.of('puffd'), words.of('mainz'), words.of('manis')]).toEqual([['puffed'], [], []])
  expect(words.of('abcdefghijklmnopqrs')).toEqual(['abcdefghijklmnopqrst'])
  expect(words.of('abcdefghijklmnopqrstu')).toEqual([])
  expect(words.of('abcdefghijklmnopqrsx')).toEqual(['abcdefghijklmnopqrst'])
})
