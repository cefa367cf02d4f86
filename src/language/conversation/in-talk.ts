// What a message may be by itself, weighed as one of a conversation.

import type { Frame } from '../frames/frame.ts'
import { conceptsIn, conceptsOf } from '../model/concepts.ts'
import type { Ranked } from '../model/index.ts'
import { wordsOf } from '../model/words.ts'
import type { Choice, Said } from '../reading/choose.ts'
import type { Vocabulary } from '../sentence/vocabulary.ts'
import { choiceBy } from './behind/choice-of.ts'
import { goesOn, isFewWords, namesWanted } from './behind/follow-up.ts'
import { isOfPacks } from './behind/lend.ts'

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
const unnamed = 0.05
/** Words of every question. */
const slight: ReadonlySet<string> = new Set(['do', 'have', 'got', 'a'])

/**
 * The intents behind a question about packs: what is not about packs is hardly meant by words that name nothing of it,
 * nor is anything taken back by many words where nothing was changed.
 */
export function rankedInTalk(
  ranked: readonly Ranked[],
  text: string,
  { question }: Frame,
  vocabulary: Vocabulary,
): readonly Ranked[] {
  const ofPacks = new Set<string>(vocabulary.filter(isOfPacks).map(({ name }) => name))
  if (!ofPacks.has(question.command) || Object.keys(question.options).length === 0) return ranked
  const said = new Set(wordsOf(text).flatMap(word => (slight.has(word) ? [] : conceptsOf(word))))
  const isNamed = (name: string) =>
    [...name.split(' ').flatMap(conceptsOf), ...(toldBy[name] ?? [])].some(concept => said.has(concept)) &&
    (name !== 'undo' || isFewWords(text))
  const isOther = (name: string) => vocabulary.some(one => one.name === name) && !ofPacks.has(name) && !isNamed(name)
  const weighed = ranked.map(one => (isOther(one.intent) ? { ...one, share: one.share * unnamed } : one))
  const whole = weighed.reduce((sum, { share }) => sum + share, 0)
  return weighed.map(one => ({ ...one, share: one.share / whole })).toSorted((a, b) => b.share - a.share)
}

const goesFurther = /^\W*(?:and|or|if|what about|how about|with|instead)\b/i

/**
 * In a conversation few words rarely ask for a list, or for what they give no detail of, and never for what bears a name
 * that nobody told, but of a log; and what says what it wants to know is seldom idle.
 */
export function inTalk(asked: readonly Choice[], { text, values, ranked, vocabulary }: Said): readonly Choice[] {
  const isOfLog = conceptsIn(text).includes('log')
  const nameless = new Set(asked.filter(one => !isOfLog && lacksName(one, vocabulary)).map(({ intent }) => intent))
  const rest = 1 - ranked.reduce((sum, { intent, share }) => (nameless.has(intent) ? sum + share : sum), 0)
  const asksOn = namesWanted(text, values) || goesFurther.test(text)
  return asked
    .filter(({ intent }) => !nameless.has(intent))
    .map(choice => {
      const { fitted, intent } = choice
      const isEmpty = fitted && (Object.keys(fitted.options).length === 0 || fitted.missing !== undefined)
      const isIdle = intent === 'notours' || intent === 'smalltalk'
      const share =
        isEmpty && (isFewWords(text) || values.length === 0)
          ? goesOn.test(text)
            ? 0.2
            : 0.4
          : isIdle && asksOn
            ? 0.2
            : 1
      return { ...choice, score: Math.min(1, choice.score / rest) * share }
    })
}

/** Of the log of a pack that bears a name, and none was told. */
function lacksName({ fitted }: Choice, vocabulary: Vocabulary): boolean {
  const missing = fitted?.missing
  const open = typeof missing === 'object' && 'option' in missing ? missing.option : undefined
  const command = vocabulary.find(({ name }) => name === fitted?.command)
  return command?.options.some(({ name, kind }) => kind === 'pack name' && name === open) ?? false
}

const others: ReadonlySet<string> = new Set(['supply', 'source', 'plan', 'time'])

/** What the question before has no use for, as a question of another command about the same things that takes all of it. */
export const elsewhere = ({ values, vocabulary, lentTo }: Said): Choice | undefined =>
  vocabulary
    .filter(({ name }) => values.length > 0 && others.has(name))
    .map(command => choiceBy(command, values, lentTo(command)))
    .find(({ fitted, kept }) => fitted?.left.length === 0 && fitted.missing === undefined && kept.length > 0)
