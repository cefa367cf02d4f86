// How fast a question is read, and that the time grows with the length of a text and not with its square.

import { commands } from '../../commands/index.ts'
import { createRegistry } from '../../src/assistant/registry.ts'
import { longestText } from '../../src/ground/plain-text.ts'
import { attempt } from '../../src/ground/problem.ts'
import { entriesFor } from '../../src/handbook/search.ts'
import { candidatesOf } from '../../src/language/candidates/index.ts'
import { readPlainly } from '../../src/language/conversation/read-plainly.ts'
import { intentsOf } from '../../src/language/model/index.ts'
import { readTyped } from '../../src/language/sentence/typed.ts'
import { readCharger } from '../../src/language/things/charger.ts'
import { readPack } from '../../src/language/things/pack.ts'
import { readSource } from '../../src/language/things/source.ts'
import type { Row } from './benches.ts'
import { percentile, timesOf } from './timing.ts'

const { vocabulary } = createRegistry(commands)
const name = vocabulary[0]?.name ?? ''

const read = (text: string) =>
  attempt(() => readTyped(text, vocabulary) ?? readPlainly(text.slice(0, longestText), vocabulary, undefined, [], 0))
const everyReader = [
  read,
  (text: string) => read(`${name} ${text}`),
  (text: string) => attempt(() => readPack(text)),
  (text: string) => attempt(() => readCharger(text)),
  (text: string) => attempt(() => readSource(text)),
]

/** Texts made to be read over and over by a careless grammar. */
const unkind = [
  '9',
  '1.',
  '1/',
  '1 ',
  '3S ',
  '1S 2 ',
  '1A ',
  '1-',
  'a:',
  '- ',
  'from 3.7V ',
  'no no ',
  '(',
  '😀',
  'hot ',
  'ש',
]

const filled = (piece: string, length: number): string =>
  piece.repeat(Math.ceil(length / piece.length)).slice(0, length)

export default async function notation(): Promise<Row[]> {
  const pairs_ms = await timesOf(5000, () => read('time pack: 3S 720 LiHV current: 1A from: 3.7V to: full'))
  const plain_ms = await timesOf(5000, () => read('how long for my 3s 720 lihv at 1A from 3.7V to storage'))
  const asked = 'just landed, what amps for the 3s 720 lihv so that it is done by half past two?'
  const candidates = candidatesOf(asked)
  const intent_ms = await timesOf(5000, () => intentsOf(asked, candidates))
  const search_ms = await timesOf(2000, () => entriesFor('why is the last ten percent of a charge so slow'))
  const growth = await Promise.all(unkind.map(slowestOf))
  const worst = growth.reduce((a, b) => (b.full_ms > a.full_ms ? b : a))
  const long_ms = await timesOf(200, () => everyReader.map(reader => reader(filled('3S 720 ', 20_000))))
  return [
    { name: 'question in notation, median', value: `${(percentile(pairs_ms, 50) * 1000).toFixed(0)} µs` },
    { name: 'question in plain words, median', value: `${(percentile(plain_ms, 50) * 1000).toFixed(0)} µs` },
    { name: 'what is wanted, by the model, median', value: `${(percentile(intent_ms, 50) * 1000).toFixed(0)} µs` },
    { name: 'search in the handbook, median', value: `${(percentile(search_ms, 50) * 1000).toFixed(0)} µs` },
    {
      name: `slowest unkind text of ${longestText} characters (${JSON.stringify(worst.piece)})`,
      value: `${worst.full_ms.toFixed(1)} ms`,
      ratio: `${(worst.full_ms / worst.half_ms).toFixed(1)} times one of half the length (2 is linear)`,
    },
    { name: '20,000 characters refused by all readers', value: `${(percentile(long_ms, 50) * 1000).toFixed(0)} µs` },
  ]
}

async function slowestOf(piece: string): Promise<{ piece: string; full_ms: number; half_ms: number }> {
  const slowest = async (length: number) => {
    const text = filled(piece, length)
    const medians: number[] = []
    for (const reader of everyReader) medians.push(percentile(await timesOf(15, () => reader(text)), 50))
    return Math.max(...medians)
  }
  return { piece, full_ms: await slowest(longestText - 20), half_ms: await slowest(longestText / 2 - 10) }
}
