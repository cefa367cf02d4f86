// A short answer to what was asked before: it changes a detail, corrects one, or asks another thing about the same pack.

import { nearest } from '../../ground/nearest.ts'
import { attempt } from '../../ground/problem.ts'
import { bestCover, candidatesOf } from '../candidates/index.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Ranked } from '../model/index.ts'
import { type Choice, takes } from '../reading/choose.ts'
import { type Fitted, fitTo, isOfLabel, type Kept } from '../reading/fit.ts'
import { isNamedKind } from '../reading/free-words.ts'
import { type PackTold, toldBy, toldIn } from '../reading/told-pack.ts'
import { readPairs } from '../sentence/option-pairs.ts'
import type { CommandWords, Vocabulary } from '../sentence/vocabulary.ts'
import { readCellType } from '../things/cell-type.ts'
import type { Frame } from './frame.ts'

/** Words that go on from what was said before. */
const goesOn =
  /^(?:and|or|but|no+|nope|nah|not|so|ok(?:ay)?|then|what about|how about|what if|and what|same|also|instead|rather|with|make (?:it|that)|now|if|it'?s|it is|they'?re|they are|that'?s|sorry|i meant|i mean|actually|wait|oh|hm+|only|just|why)\b/i
const fewWords = 5
/** How much each sign speaks for an amendment, beside what the model says. */
const goingOn = 0.35
const short = 0.15
/** All that a short text holds are details of what was asked. */
const fits = 0.3

/** Nothing but the question for the reason: of the answer before. */
export const asksWhy =
  /^\W*(?:(?:but|and|so|ok|hm+|oh|no|hang on|wait) )*(?:why|how come|how so)(?: (?:that|so|is that|though|tho|not))?\W*$/i

/** What a sentence makes of the frame's question: an answer to what we asked back, or a change of it; undefined where neither. */
export function amended(
  text: string,
  values: readonly Candidate[],
  ranked: readonly Ranked[],
  frame: Frame,
  vocabulary: Vocabulary,
): Choice | undefined {
  const answered = frame.pending ? answerTo(text, values, frame, vocabulary) : undefined
  if (answered) return answered
  const command = vocabulary.find(({ name }) => name === frame.question.command)
  if (!command) return undefined
  const written = attempt(() => readPairs(text, command, true))
  if (written?.before === '') return choiceOf(fitTo(command, [], { ...frame.question.options, ...written.options }), {})
  if (asksWhy.test(text))
    return { ...choiceOf(fitTo(command, [], frame.question.options), frame.question.options), score: 1 }
  if (turnsRound.test(text)) return turned(command, frame)
  // Whoever asks for a reason changes nothing.
  if (values.length === 0 || /^\W*(?:but |and |so )*(?:why|how come)\b/i.test(text)) return undefined
  const isShort = isFewWords(text)
  const share = ranked.find(({ intent }) => intent === 'amend')?.share ?? 0
  // The same question of another pack, told in full, stands on its own.
  const isSame = !values.some(namesPack)
  const same = isSame ? (ranked.find(({ intent }) => intent === command.name)?.share ?? 0) : 0
  const score = share + same + (goesOn.test(text) ? goingOn : 0) + (isShort ? short : 0)
  return changed(command, values, frame, score, isShort)
}

/** The details of the frame hold on, but for those that the sentence gives anew. */
function changed(
  command: CommandWords,
  values: readonly Candidate[],
  { question }: Frame,
  score: number,
  isShort: boolean,
): Choice | undefined {
  const { pack, ...rest } = question.options
  const told = values.some(value => toldBy(value) !== undefined || isOfLabel(value))
  const isNewPack = values.some(namesPack)
  const before = told ? (pack === undefined ? cellsBefore(question.options) : toldBefore(pack, isNewPack)) : undefined
  // What was measured of a pack does not hold for another one.
  const { capacity: _, resistance: __, ...unmeasured } = rest
  const kept: Kept = told ? unmeasured : question.options
  const fitted = fitTo(command, values, kept, before)
  // What changes nothing is no amendment.
  if (values.length > 0 && fitted.left.length === values.length) return undefined
  const isAllTaken = isShort && fitted.left.length === 0 && fitted.missing === undefined
  return { ...choiceOf(fitted, kept), score: (score + (isAllTaken ? fits : 0)) * takes(fitted, values) }
}

/** Nothing but that what feeds and what is charged change places; of leads it is a danger, and tells of them. */
export const turnsRound = /^\W*(?:(?:and|or|so|what about|how about|if) )*(?:the )?other way (?:a)?round\W*$/i

function turned(command: CommandWords, { question: { options } }: Frame): Choice | undefined {
  const { source = '', pack } = options
  if (pack === undefined || !toldIn(source)) return undefined
  return choiceOf(fitTo(command, [], { ...options, source: pack, pack: source }), {})
}

export const isFewWords = (text: string): boolean => text.trim().split(/\s+/).length <= fewWords

const namesPack = ({ pack }: Candidate): boolean => pack?.capacity_Ah !== undefined && pack.series !== undefined

/** Cells without a capacity: "it is a 4S" leaves their type as it was told. */
function cellsBefore({ cells, chemistry = cells }: Kept): PackTold | undefined {
  const told = chemistry === undefined ? undefined : attempt(() => readCellType(chemistry).value)
  return told && { chemistry: told.chemistry.name, ...(told.series !== undefined && { series: told.series }) }
}

/** Of another pack only the type holds on. */
function toldBefore(text: string, isNewPack: boolean): PackTold | undefined {
  const pack = toldIn(text)
  return isNewPack && pack ? { chemistry: pack.chemistry } : pack
}

/** "2", "lihv" or "1300" to a question that we asked back; undefined where it is no answer to that. */
function answerTo(
  text: string,
  values: readonly Candidate[],
  { question, pending }: Frame,
  vocabulary: Vocabulary,
): Choice | undefined {
  const command = vocabulary.find(({ name }) => name === question.command)
  if (!command || !pending) return undefined
  const { missing, choices, told } = pending
  const chosen = /^\W*([1-9])\W*$/.exec(text)?.[1]
  const offered = chosen === undefined ? undefined : choices[Number(chosen) - 1]
  const given = offered === undefined ? values : bestCover(candidatesOf(offered))
  if (missing === 'capacity') {
    const bare = given.find(({ kind }) => kind === 'number')
    const capacity_Ah =
      given.map(value => toldBy(value)?.capacity_Ah).find(one => one !== undefined) ??
      (bare && Number(bare.text) >= 20 ? Number(bare.text) / 1000 : undefined)
    if (capacity_Ah === undefined) return undefined
    return choiceOf(fitTo(command, [], question.options, { ...told, capacity_Ah }), question.options)
  }
  if ('cells' in missing) {
    const bare = given.find(({ kind }) => kind === 'number' || kind === 'count')
    const series =
      given.map(value => toldBy(value)?.series).find(one => one !== undefined) ?? (bare && Number(bare.text))
    return series === undefined
      ? undefined
      : choiceOf(fitTo(command, [], question.options, { ...told, series }), question.options)
  }
  const free = command.options.find(({ name }) => name === missing.option)
  const word = free && isNamedKind(free.kind) ? (offered ?? wordsFor(text, choices)) : undefined
  if (word !== undefined) {
    const options = { ...question.options, [missing.option]: word }
    return choiceOf(fitTo(command, [], options), question.options)
  }
  const fitted = fitTo(command, given, question.options, told)
  const isFilled = fitted.options[missing.option] !== undefined
  return isFilled ? choiceOf(fitted, question.options) : undefined
}

/** A name or a title as somebody types it in answer: one of the choices, or few words that ask nothing. */
const wordsFor = (text: string, choices: readonly string[]): string | undefined =>
  nearest(text.trim(), choices) ??
  (text.trim().split(/\s+/).length <= 3 && !text.includes('?') ? text.trim() : undefined)

const choiceOf = (fitted: Fitted, kept: Kept): Choice => ({
  intent: fitted.command as Choice['intent'],
  fitted,
  score: 1,
  kept: Object.keys(kept).filter(name => fitted.options[name] === kept[name]),
})

/** What the frame lends to a question of its own that names no pack: all that the two have in common. */
export function keptFrom(frame: Frame | undefined, { options }: CommandWords, values: readonly Candidate[]): Kept {
  const tellsOfPack = values.some(value => toldBy(value) !== undefined)
  const takesPack = options.some(({ kind }) => packKinds.has(kind))
  if (!frame || tellsOfPack || !takesPack) return {}
  return frame.question.options
}

const packKinds: ReadonlySet<string> = new Set(['pack', 'packs', 'session packs'])
