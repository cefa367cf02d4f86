// What a message may be by itself, weighed as one of a conversation.

import type { Candidate } from '../candidates/index.ts'
import type { Frame } from '../frames/frame.ts'
import { conceptsIn, conceptsOf } from '../model/concepts.ts'
import type { Ranked } from '../model/index.ts'
import { wordsOf } from '../model/words.ts'
import type { Choice } from '../reading/choose.ts'
import type { Fitted } from '../reading/fit.ts'
import type { CommandWords, Vocabulary } from '../sentence/vocabulary.ts'
import { choiceBy } from './choice-of.ts'
import { goesOn, isFewWords, namesWanted } from './follow-up.ts'
import { type Lent, packKinds } from './lend.ts'

/** What tells of them, beside the words of their own names. */
const toldBy: Readonly<Record<string, readonly string[]>> = {
  'house set': ['rules', 'limit', 'club', 'storage'],
  'house show': ['rules', 'limit', 'club'],
  undo: ['changed'],
  history: ['changed', 'back'],
  'remind me': ['when', 'time'],
  'log charge': ['took'],
  'answer post': ['place'],
}

/**
 * The intents behind a question about packs: what is not about packs is hardly meant by words that name nothing of it,
 * nor is anything taken back by many words where nothing was changed.
 */
export function rankedInTalk(
  ranked: readonly Ranked[],
  text: string,
  values: readonly Candidate[],
  { question }: Frame,
  vocabulary: Vocabulary,
): readonly Ranked[] {
  const isOfPacks = (name: string) =>
    vocabulary.some(one => one.name === name && one.options.some(({ kind }) => packKinds.has(kind)))
  if (!isOfPacks(question.command) || Object.keys(question.options).length === 0) return ranked
  const said = new Set(wordsOf(text).flatMap(word => (slight.has(word) ? [] : conceptsOf(word))))
  const isNamed = (name: string) =>
    [...name.split(' ').flatMap(conceptsOf), ...(toldBy[name] ?? [])].some(concept => said.has(concept)) &&
    (name !== 'undo' || isFewWords(text)) &&
    !(name === 'house set' && values.some(({ ofLabel }) => ofLabel))
  const weighed = ranked.map(one => {
    const command = vocabulary.find(({ name }) => name === one.intent)
    return !command || isOfPacks(command.name) || isNamed(command.name) ? one : { ...one, share: one.share * unnamed }
  })
  const whole = weighed.reduce((sum, { share }) => sum + share, 0) || 1
  return weighed.map(one => ({ ...one, share: one.share / whole })).toSorted((a, b) => b.share - a.share)
}

const goesFurther = /^\W*(?:and|or|if|what about|how about|with|instead)\b/i
const polite = /\b(?:thank|thx|cheers|bye|night|you)/i
const unnamed = 0.05
/** Words of every question. */
const slight: ReadonlySet<string> = new Set(['do', 'have', 'got', 'a'])

/**
 * In a conversation few words rarely ask for a list, or for what they give no detail of, and never for what bears a name
 * that nobody told, but of a log; and what says what it wants to know is seldom idle.
 */
export function inTalk(
  asked: readonly Choice[],
  text: string,
  values: readonly Candidate[],
  ranked: readonly Ranked[],
  vocabulary: Vocabulary,
): readonly Choice[] {
  const isOfLog = conceptsIn(text).includes('log')
  const nameless = isOfLog
    ? []
    : asked.filter(({ fitted }) => fitted?.missing !== undefined && lacksName(fitted, vocabulary))
  const lost = ranked.filter(one => nameless.some(({ intent }) => intent === one.intent))
  const rest = 1 - lost.reduce((sum, { share }) => sum + share, 0)
  return asked
    .filter(one => !nameless.includes(one))
    .map(choice => {
      const { fitted, intent } = choice
      const score = Math.min(1, choice.score / rest)
      const isEmpty = fitted && (Object.keys(fitted.options).length === 0 || fitted.missing !== undefined)
      if (isEmpty && (isFewWords(text) || values.length === 0))
        return { ...choice, score: score * (goesOn.test(text) ? 0.2 : 0.4) }
      const isIdle = intent === 'notours' || intent === 'smalltalk'
      const asksOn = namesWanted(text, values) || (goesFurther.test(text) && !polite.test(text))
      return { ...choice, score: isIdle && asksOn ? score * 0.2 : score }
    })
}

/** Of the log of a pack that bears a name, and none was told. */
const lacksName = ({ command, missing }: Fitted, vocabulary: Vocabulary): boolean =>
  vocabulary
    .find(({ name }) => name === command)
    ?.options.some(
      ({ name, kind }) =>
        kind === 'pack name' && typeof missing === 'object' && 'option' in missing && missing.option === name,
    ) ?? false

const others: readonly string[] = ['supply', 'source', 'plan', 'time']

/** What the question before has no use for, as a question of another command about the same things that takes all of it. */
export function elsewhere(
  values: readonly Candidate[],
  vocabulary: Vocabulary,
  lent: (command: CommandWords) => Lent,
): Choice | undefined {
  if (values.length === 0) return undefined
  return vocabulary
    .filter(({ name }) => others.includes(name))
    .map(command => choiceBy(command, values, lent(command)))
    .find(({ fitted, kept }) => fitted?.left.length === 0 && fitted.missing === undefined && kept.length > 0)
}
