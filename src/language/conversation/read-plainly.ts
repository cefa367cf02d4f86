// Reads a plain sentence: values first, then what is wanted, then both fitted, with every word accounted for.

import type { Doubt } from '../../charging/situation/doubts.ts'
import { present } from '../../ground/present.ts'
import { bestCover, candidatesOf } from '../candidates/index.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Frame } from '../frames/frame.ts'
import { knownShare } from '../model/index.ts'
import { namesForeign } from '../parts/foreign-chemistries.ts'
import { figureBeside } from '../reading/beside-words.ts'
import { beyondInput } from '../reading/beyond-input.ts'
import { aside, type Choice, choicesAt, fitRead, type Said } from '../reading/choose.ts'
import { type FreeWords, isOfNamed, outside } from '../reading/free-words.ts'
import type { Meant, Near, Understanding } from '../reading/meant.ts'
import { readings } from '../reading/readings.ts'
import { isLabelTakenAlong } from '../reading/signs/said-of-it.ts'
import { standsAt, warmthTold } from '../reading/stands.ts'
import { changesNothing, notUnderstood, keptFrom as saidKept } from '../reading/told/assumed.words.ts'
import { withCutoffType } from '../reading/told/by-cutoff.ts'
import { toldBy } from '../reading/told/told-pack.ts'
import { tellsOfPacks } from '../reading/weighing.ts'
import { type Span, spansOf, wordsLeft } from '../reading/words-left.ts'
import type { CommandWords, Vocabulary } from '../sentence/vocabulary.ts'
import { choiceBy, choiceOf } from './behind/choice-of.ts'
import { isOnlyValues } from './behind/follow-up.ts'
import { lentTo } from './behind/lend.ts'
import { followUp } from './follow.ts'
import { opensAsking } from './heard/asks-nothing.ts'
import { countOf } from './heard/words-beside.ts'
import { elsewhere, inTalk, rankedInTalk } from './in-talk.ts'

/** Less of the words known than this, and nothing that fits: it is not ours. */
const leastKnown = 0.5
/** Less likely than this, nothing is clear enough to answer. */
const leastScore = 0.12
/** Less likely than this, a word or two without a value tell nothing: "next", "what now". */
const [leastIdle, fewest] = [0.5, 2]
/** Less likely than this it is another question. */
const faintest = 0.002
/** As likely as this it changes what was asked before. */
const surelyChange = 0.5

/** What the handbook has on a text. */
export interface OfEntry {
  /** A question in notation that works it out with numbers. */
  readonly command: string | undefined
  /** Leave is asked for a danger: the handbook's own answer is its verdict. */
  readonly isJudged: boolean
}

/**
 * `frame` is the last question of this asker in this place; `accounted` are spans that names and dangers account for;
 * `inHandbook` says how surely the handbook answers the text, 1 and above where it does.
 */
export function readPlainly(
  text: string,
  vocabulary: Vocabulary,
  frame: Frame | undefined,
  accounted: readonly Span[],
  inHandbook: number,
  free: FreeWords = { typed: text, of: () => ({}) },
  entry: OfEntry | undefined = undefined,
): Meant {
  const values = withCutoffType(text, bestCover(candidatesOf(text)))
  const { ranked: all, readBy } = readings(text, values, free, vocabulary)
  const ranked = frame ? rankedInTalk(all, text, frame, vocabulary) : all
  const lent = (command: CommandWords) => lentTo(frame, command, text, values)
  const said = { text, values, ranked, vocabulary, readBy, lentTo: lent, inHandbook }
  const asked = choicesAt(!frame, said)
  const talked = frame ? inTalk(asked, said).toSorted((a, b) => b.score - a.score) : asked
  const bare = bareThing(text, values)
  const own = bare ? [...askedOf(bare, said), ...talked] : talked
  const command = vocabulary.find(({ name }) => name === free.meant)
  // "Save that pack as hawk": the one that was spoken of.
  const spoken = command?.name === 'kit save' ? lent(command) : { kept: {}, before: undefined }
  const meant = command && choiceOf(fitRead(command, readBy(command), spoken.kept, spoken.before), spoken.kept)
  const follows = meant ?? (frame && followUp({ ...said, frame, other: own[0] }))
  // The surer it goes on, the less it is a question of its own.
  const found = follows
    ? [...own.map(one => ({ ...one, score: one.score * (1 - follows.score) })), follows].toSorted(
        (a, b) => b.score - a.score,
      )
    : own
  const shareOf = (intent: string | undefined) => ranked.find(one => one.intent === intent)?.share ?? 0
  const isChange = frame !== undefined && shareOf('amend') >= surelyChange
  const [first] = found
  // What surely changes what was asked before, and fits nothing, is no other question.
  const isFar = (one: Choice | undefined) =>
    isChange && one !== follows && shareOf(one?.intent) < faintest && one?.intent !== frame.question.command
  const isWeak = (first?.score ?? 0) < leastScore || isFar(first)
  const other = isChange && isWeak ? elsewhere(said) : undefined
  const best = other ?? judgedAt(said, first, frame) ?? workedOut(said, first, entry) ?? first
  const share = best === follows ? 1 : shareOf(best?.intent)
  const understanding = understandingOf(text, best, share, values, accounted)
  const near = found.map(nearOf)
  if (!follows && values.length === 0 && !/\p{L}/u.test(text)) return { kind: 'unclear', near: [], understanding }
  // Values alone say nothing of what is wanted, least of all that something is to be kept.
  const isOpen = best?.fitted?.missing !== undefined || vocabulary.some(one => one.changes && one.name === best?.intent)
  if (!follows && isOpen && !bare && isOnlyValues(text, values)) return { kind: 'unclear', near, understanding }
  const isFaint = best !== other && isFar(best)
  const isIdle = !frame && values.length === 0 && share < leastIdle && countOf(text) <= fewest
  const isClear = best !== undefined && best.score >= leastScore && !isFaint && !isIdle
  // "Mine is 50 degrees" tells of a pack, and sets no rule.
  const temperature = meant ? undefined : warmthTold(text, values)
  if (temperature !== undefined && !(isClear && best.fitted?.options.coldest === undefined))
    return { kind: 'handbook', near, understanding, temperature }
  const isStrange = values.length === 0 && knownShare(text) === 0
  const isListAlone =
    best !== undefined && understanding.notUnderstood.length > 0 && !meant && isList(best) && !opensAsking.test(text)
  if (!isClear || isStrange || isListAlone)
    return { kind: tellsOfPacks(values) || knownShare(text) >= leastKnown ? 'unclear' : 'notours', near, understanding }
  const { fitted, kept } = best
  if (!fitted) {
    const kind = aside.get(best.intent) ?? 'unclear'
    return { kind: kind === 'notours' && tellsOfPacks(values) ? 'unclear' : kind, near, understanding, temperature }
  }
  // A setting for lithium would be wrong for cells of another kind.
  const { pack, packs, chemistry } = fitted.options
  const sources = values.filter(({ kind }) => kind === 'source')
  if ((pack ?? packs ?? chemistry) && namesForeign(text, sources)) return { kind: 'handbook', near, understanding }
  const question = { command: fitted.command, options: fitted.options }
  // What is only assumed stays so, whatever is chosen.
  if (fitted.missing) {
    const open = { ...question, told: fitted.doubts }
    return { kind: 'asks back', question: open, missing: fitted.missing, told: fitted.told, understanding }
  }
  const isNamed = vocabulary.some(one => one.name === fitted.command && isOfNamed(one))
  const ofCommand = new Set(fitted.command.split(' '))
  const strangeOf = (typed: readonly string[]) =>
    outside(
      typed.filter(word => !ofCommand.has(word.toLowerCase())).map(word => ({ typed: word })),
      isNamed ? fitted.options : {},
    ).map(one => one.typed)
  const [unplaced, strange] = [strangeOf(fitted.left.map(({ typed }) => typed)), strangeOf(understanding.notUnderstood)]
  return {
    kind: 'question',
    question,
    assumed: present([
      kept.length > 0 ? saidKept(kept) : undefined,
      ...fitted.assumed,
      unplaced.length > 0 ? changesNothing(unplaced) : undefined,
      strange.length > 0 ? notUnderstood(strange) : undefined,
    ]),
    doubts: present([
      ...new Set([
        ...fitted.doubts,
        ...((best === follows && !meant) || kept.length > 0 ? stillAssumed(frame, values) : []),
      ]),
      unplaced.length > 0 || strange.length > 0 ? 'notUnderstood' : undefined,
    ]),
    understanding,
  }
}

/** Volts that the charger does not take, or where a pack stands, of what asks in words or for readings of its cells. */
function judgedAt(
  { text, values, vocabulary }: Said,
  likeliest: Choice | undefined,
  frame: Frame | undefined,
): Choice | undefined {
  if (!likeliest) return undefined
  const { fitted, intent, score } = likeliest
  const isLacking = fitted?.missing !== undefined || score < leastScore
  const asksReadings = intent === 'cells' && isLacking
  const state =
    beyondInput(values, vocabulary, frame?.question.options ?? {}) ??
    standsAt(text, values, vocabulary, asksReadings, asksReadings || aside.get(intent) === 'handbook')
  return state && { ...likeliest, fitted: state, kept: [], score: Math.max(score, leastScore) }
}

/** A figure that is asked for beside words of the handbook's, which then are a line of the answer. */
function workedOut(said: Said, likeliest: Choice | undefined, entry: OfEntry | undefined): Choice | undefined {
  if (likeliest?.intent !== 'handbook' || entry?.isJudged || isLabelTakenAlong(said.text, said.values)) return undefined
  const fitted = figureBeside(said, entry?.command)
  return fitted && { ...likeliest, fitted, kept: [], score: Math.max(likeliest.score, leastScore) }
}

const nearOf = ({ intent, fitted }: Choice): Near => ({
  intent,
  question:
    fitted?.missing || !fitted ? undefined : { command: fitted.command, options: fitted.options, told: fitted.doubts },
})

/** What was assumed of the pack before and is not told now. */
export const stillAssumed = (frame: Frame | undefined, values: readonly Candidate[]): readonly Doubt[] =>
  (frame?.doubts ?? []).filter(
    doubt =>
      (doubt === 'chemistryAssumed' && !values.some(value => toldBy(value)?.chemistry !== undefined)) ||
      ((doubt === 'cellsUnknown' || doubt === 'cellsByVolts') &&
        !values.some(value => toldBy(value)?.series !== undefined)),
  )

/** A pack, a part of one or a source and nothing else: what is set for it, and what it carries, is the first thing to know. */
function bareThing(text: string, values: readonly Candidate[]): 'current' | 'supply' | undefined {
  const [only, ...others] = values
  if (!only || others.length > 0 || !isOnlyValues(text, values)) return undefined
  if (only.pack) return 'current'
  return only.kind === 'source' && /\d/.test(only.text) ? 'supply' : undefined
}

function askedOf(name: string, { values, vocabulary, lentTo }: Said): readonly Choice[] {
  const command = vocabulary.find(one => one.name === name)
  return command ? [choiceBy(command, values, lentTo(command))] : []
}

/** It takes no details: what it would be asked by is the words alone. */
const isList = ({ fitted }: Choice): boolean => fitted !== undefined && Object.keys(fitted.options).length === 0

const understandingOf = (
  text: string,
  best: Choice | undefined,
  likelihood: number,
  values: readonly Candidate[],
  accounted: readonly Span[],
): Understanding => ({
  intent: best?.intent ?? 'notours',
  likelihood,
  values: values.map(({ kind, typed, start, end }) => ({ kind, text: typed, start, end })),
  notUnderstood: wordsLeft(text, [...spansOf(values), ...accounted]),
})
