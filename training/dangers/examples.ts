// What is learned from: the corpus without the people held out, pairs of a danger and its harmless twin, and plain lines.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Danger, dangerNamed } from '../../src/charging/situation/dangers.ts'
import { authors, furtherMessages, heldOut, messagesOf } from '../corpus/read-corpus.ts'

export interface Example {
  readonly text: string
  readonly dangers: readonly Danger[]
  readonly weight: number
  /** The rules were written after messages of this person: there they find more than they will elsewhere. */
  readonly isKnownToRules: boolean
}

/** The rules were written from the messages of these people alone. */
const writtenFrom = 36
/** Pairs are harder than what people usually write, and there are many. */
const weightOfPairs = 0.34

export const allExamples = (): readonly Example[] => [...messages(), ...pairs(), ...ownSentences(), ...saidToUs()]

const messages = (): Example[] =>
  authors
    .filter(author => !heldOut.has(author))
    .flatMap(author =>
      messagesOf(author).map(({ text, dangers }) => ({
        text,
        dangers,
        weight: 1,
        isKnownToRules: author <= writtenFrom,
      })),
    )

/** Files of lines "dangers, message, harmless twin" with tabs between; "-" and a message alone is harmless. */
function pairs(): Example[] {
  const folder = join(import.meta.dirname, 'pairs')
  const lines = readdirSync(folder)
    .sort()
    .flatMap(file => linesOf(join(folder, file)))
    .map(line => line.split('\t'))
  const plain = lines.filter(([marks]) => marks === '-').map(([, text = '']) => text)
  return lines.flatMap(([marks = '', ...texts], n) =>
    marks === '-'
      ? texts.map(text => ({ text, dangers: [], weight: 1, isKnownToRules: false }))
      : texts.flatMap((text, twin) => {
          const example = {
            dangers: twin > 0 ? [] : marks.split(',').map(mark => dangerNamed(mark.trim())),
            weight: weightOfPairs,
            isKnownToRules: false,
          }
          return [text, amid(text, plain[n % plain.length] ?? '', n)].map(said => ({ ...example, text: said }))
        }),
  )
}

/** The same beside an ordinary question, before or after it: a danger stays one among other words. */
const amid = (text: string, other: string, n: number): string =>
  n % 2 === 0 ? `${text} ${other}` : `${other}, ${text}`

/** Sentences under the danger that they tell, and under "none". */
function ownSentences(): Example[] {
  const examples: Example[] = []
  let dangers: Danger[] = []
  for (const line of linesOf(join(import.meta.dirname, 'sentences.txt'))) {
    if (line.startsWith('# ')) dangers = line === '# none' ? [] : [dangerNamed(line.slice(2))]
    else examples.push({ text: line, dangers, weight: 1, isKnownToRules: true })
  }
  return examples
}

/** What is asked of the assistant itself, of cards, rules and names, tells no danger whatever they speak of. */
const saidToUs = (): Example[] =>
  furtherMessages()
    .filter(({ intent }) => ofUs.test(intent))
    .map(({ text }) => ({ text, dangers: [], weight: weightOfPairs, isKnownToRules: false }))

const ofUs =
  /^(?:answer|house|undo|history|rules|help|kit (?:list|rename|remove)|remind (?:list|cancel)|lesson|forget|export|lend|hello|small|notours|energy|percent)/

const linesOf = (path: string): string[] =>
  readFileSync(path, 'utf8')
    .split('\n')
    .filter(line => line !== '')
