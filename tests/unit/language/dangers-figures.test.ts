// How well dangers are told on the messages of people whom neither rules nor weights have seen.

import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { Danger } from '../../../src/charging/situation/dangers.ts'
import { dangersIn } from '../../../src/language/dangers/index.ts'
import { heldOutAuthors } from '../../../src/language/dangers/train.ts'

interface Message {
  readonly part: 'A' | 'B'
  readonly text: string
  readonly dangers: readonly Danger[]
}

const folder = new URL('../../../src/language/corpus/', import.meta.url)

const heldOut: readonly Message[] = readdirSync(folder)
  .filter(name => heldOutAuthors.has(Number(/^author-(\d+)\.jsonl$/.exec(name)?.[1])))
  .flatMap(name => readFileSync(new URL(name, folder), 'utf8').split('\n'))
  .filter(line => line.trim() !== '')
  .map(line => JSON.parse(line) as Message)

const share = (messages: readonly Message[], holds: (message: Message) => boolean): number =>
  messages.filter(holds).length / messages.length

const isTold = ({ text }: Message): boolean => dangersIn(text).told.length > 0
const isSuspected = ({ text }: Message): boolean =>
  dangersIn(text).suspected && !isTold({ part: 'A', text, dangers: [] })

test('dangers of unseen people are told or suspected, and their harmless messages left alone', () => {
  const marked = heldOut.filter(({ dangers }) => dangers.length > 0)
  const twins = heldOut.filter(({ part, dangers }) => part === 'B' && dangers.length === 0)
  const plain = heldOut.filter(({ part, dangers }) => part === 'A' && dangers.length === 0)
  const isNamed = ({ text, dangers }: Message) => dangersIn(text).told.some(({ danger }) => dangers.includes(danger))
  expect(share(marked, isNamed)).toBeGreaterThan(0.74)
  expect(share(marked, message => isTold(message) || isSuspected(message))).toBeGreaterThan(0.9)
  expect(share(twins, isTold)).toBeLessThan(0.22)
  expect(share(plain, isTold)).toBeLessThan(0.08)
  expect(share(plain, isSuspected)).toBeLessThan(0.12)
})
