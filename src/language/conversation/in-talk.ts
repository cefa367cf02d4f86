// What a message may be by itself, weighed as one of a conversation.

import type { Candidate } from '../candidates/index.ts'
import { conceptsOf } from '../model/concepts.ts'
import type { Ranked } from '../model/index.ts'
import { wordsOf } from '../model/words.ts'
import type { Choice } from '../reading/choose.ts'
import { type Fitted, fitTo } from '../reading/fit.ts'
import { toldIn } from '../reading/told-pack.ts'
import { writeQuestion } from '../sentence/question.ts'
import type { CommandWords, Vocabulary } from '../sentence/vocabulary.ts'
import { opensAsking } from './asks-nothing.ts'
import { choiceBy, choiceOf } from './choice-of.ts'
import { goesOn, isFewWords, namesWanted } from './follow-up.ts'
import type { Frame } from './frame.ts'
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
  const isOfLog = wordsOf(text).some(word => conceptsOf(word).includes('log'))
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

const asksAmps = /\b(?:amps?|amperes?|current|draws?|drawn|pulls?)\b/i
const fed = /\b(?:from|off|on|at|car|socket|supply|psu|battery|input|side)\b/i

/** "How many amps is that from 12 V": what a supply of those volts gives for what was asked about. */
export function drawnFrom(
  text: string,
  values: readonly Candidate[],
  vocabulary: Vocabulary,
  lent: (command: CommandWords) => Lent,
): Choice | undefined {
  const command = vocabulary.find(({ name }) => name === 'supply')
  const [volts, ...others] = values.flatMap(({ kind, text, parts = [] }) =>
    ['voltage', 'state', 'source'].includes(kind)
      ? (supplyVolts.exec([text, ...parts.map(part => part.text)].join(' ')) ?? [])
      : [],
  )
  const isAsked = asksAmps.test(text) && fed.test(text) && values.length === 1 && !/\bwh\b/i.test(text)
  if (!command || volts === undefined || others.length > 0 || !isAsked) return undefined
  const { source: _, voltage: __, ...kept } = lent(command).kept
  // Whole volts are those of a supply; others may be where the pack itself stands.
  const perCell_V = Number.parseFloat(volts) / (toldIn(kept.pack ?? '')?.series ?? 1)
  if (volts.includes('.') && perCell_V > lowestCell_V && perCell_V < highestCell_V) return undefined
  return kept.pack === undefined ? undefined : choiceOf(fitTo(command, [], { ...kept, voltage: volts }), kept)
}
const [lowestCell_V, highestCell_V] = [3, 4.4]
/** Of what feeds chargers: 12 V from a car, 24 V, what a battery that is charged shows. */
const supplyVolts = /\b(?:1[1-5]|24|48)(?:\.\d)?V(?! per cell)/

const pointing = /\b(?:this|that|it|these|those|them)\b/i
const likely = 0.3
const pins: ReadonlySet<string> = new Set(['answer post', 'answer save'])

/** "Pin that", of what was just worked out: its answer becomes one of the club's, and only its title is open. */
export function pinned(
  text: string,
  values: readonly Candidate[],
  ranked: readonly Ranked[],
  { question }: Frame,
  vocabulary: Vocabulary,
): Choice | undefined {
  const isOfLast =
    values.length === 0 &&
    pointing.test(text) &&
    ranked.slice(0, 2).some(one => pins.has(one.intent) && one.share > likely)
  const command = vocabulary.find(({ name }) => name === 'answer save')
  const last = vocabulary.find(({ name }) => name === question.command)
  if (!command || !isOfLast || !last || last.changes || Object.keys(question.options).length === 0) return undefined
  return choiceOf(fitTo(command, [], { question: writeQuestion(question) }), {})
}

const takenAlong =
  /\b(?:on|onto|in|by) (?:a|an|the|my) (?:plane|aeroplane|airplane|airliner|flight)\b|\b(?:airlines?|cabin|airports?|(?:hand )?luggage|baggage|suitcase)\b/i

/** "Can i take those on the plane": the packs that were spoken of, taken along. */
export function flownWith(
  text: string,
  values: readonly Candidate[],
  vocabulary: Vocabulary,
  lent: (command: CommandWords) => Lent,
): Choice | undefined {
  const command = vocabulary.find(({ name }) => name === 'travel')
  if (!command || !takenAlong.test(text) || !opensAsking.test(text.replace(/^.*,/, ''))) return undefined
  const choice = choiceBy(command, values, lent(command))
  return choice.fitted?.missing === undefined ? choice : undefined
}

const givesUp =
  /\b(?:lose|losing|lost|give (?:away|up)|giving (?:away|up)|sacrifice|(?:how much|what) less|do without)\b/i

/** "What do i lose at 4.1": how full the pack that was spoken of is there. */
export function givenUp(
  text: string,
  values: readonly Candidate[],
  vocabulary: Vocabulary,
  lent: (command: CommandWords) => Lent,
): Choice | undefined {
  const command = vocabulary.find(({ name }) => name === 'percent')
  const [level, ...others] = values
  if (!command || level?.kind !== 'state' || others.length > 0 || !givesUp.test(text)) return undefined
  const { kept, before } = lent(command)
  const fitted = fitTo(command, [], { ...kept, at: level.text }, before)
  return fitted.missing === undefined ? choiceOf(fitted, kept) : undefined
}
