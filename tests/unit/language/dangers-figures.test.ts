// How well dangers are told on the messages of people whom neither rules nor weights have seen.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { dangers as rows } from '../../../src/charging/situation/dangers.ts'
import { dangersIn } from '../../../src/language/dangers/index.ts'
import { heldOut, messagesOf } from '../../../training/corpus/read-corpus.ts'

type Message = ReturnType<typeof messagesOf>[number]

const messages = [...heldOut].flatMap(author => messagesOf(author))

const share = (of: readonly Message[], holds: (message: Message) => boolean): number =>
  of.filter(holds).length / of.length

const isTold = ({ text }: Message): boolean => dangersIn(text).told.length > 0
const isSuspected = ({ text }: Message): boolean => {
  const { told, suspected } = dangersIn(text)
  return suspected.length > 0 && told.length === 0
}

test('dangers of unseen people are told or suspected, and their harmless messages left alone', () => {
  const marked = messages.filter(({ dangers }) => dangers.length > 0)
  const twins = messages.filter(({ part, dangers }) => part === 'B' && dangers.length === 0)
  const plain = messages.filter(({ part, dangers }) => part === 'A' && dangers.length === 0)
  const isNamed = ({ text, dangers }: Message) => {
    const { told, suspected } = dangersIn(text)
    return [...told.map(({ danger }) => danger), ...suspected].some(danger => dangers.includes(danger))
  }
  // The reply's first line speaks of the most pressing one told, or of the likeliest one suspected.
  const pressing = Object.keys(rows)
  const isFirst = ({ text, dangers }: Message) => {
    const { told, suspected } = dangersIn(text)
    const [first = suspected[0]] = told
      .map(({ danger }) => danger)
      .sort((a, b) => pressing.indexOf(a) - pressing.indexOf(b))
    return first !== undefined && dangers.includes(first)
  }
  expect(share(marked, isFirst)).toBeGreaterThan(0.77)
  expect(share(marked, isTold)).toBeGreaterThan(0.68)
  expect(share(marked, isNamed)).toBeGreaterThan(0.79)
  expect(share(marked, message => isTold(message) || isSuspected(message))).toBeGreaterThan(0.88)
  expect(share(twins, isTold)).toBeLessThan(0.17)
  expect(share(plain, isTold)).toBeLessThan(0.05)
  expect(share(plain, message => isTold(message) || isSuspected(message))).toBeLessThan(0.18)
})

/** By four people of whom nothing is learned: each message beside its harmless twin. */
const keptApart = readFileSync(join(import.meta.dirname, '../../fixtures/dangers/kept-apart.tsv'), 'utf8')
  .trimEnd()
  .split('\n')
  .map(line => line.split('\t') as [string, string, string])

test('of people kept apart, who tell dangers by what they do and where, four of five are caught and few twins refused', () => {
  const isTold = (text: string) => dangersIn(text).told.length > 0
  const isCaught = (text: string) => isTold(text) || dangersIn(text).suspected.length > 0
  const among = (holds: (pair: [string, string, string]) => boolean) =>
    keptApart.filter(holds).length / keptApart.length
  expect(keptApart).toHaveLength(220)
  expect(among(([, message]) => isTold(message))).toBeGreaterThan(0.58)
  expect(among(([, message]) => isCaught(message))).toBeGreaterThan(0.79)
  expect(among(([, , twin]) => isTold(twin))).toBeLessThan(0.11)
})
