// Which of the likely intents is meant: the one that is likely and takes what the sentence holds.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Intent } from '../corpus/intents.ts'
import type { Ranked } from '../model/index.ts'
import type { CommandWords, Vocabulary } from '../sentence/vocabulary.ts'
import { type Fitted, fitTo, type Kept } from './fit.ts'
import { bySigns } from './signs/by-signs.ts'
import { isLabelTakenAlong } from './signs/said-of-it.ts'
import type { PackTold } from './told/told-pack.ts'
import { isList, type Signs, signsOfFit, signsOfHandbook, tellsOfPacks, weighed } from './weighing.ts'

export interface Choice {
  readonly intent: Intent
  /** Absent where the intent is no command. */
  readonly fitted: Fitted | undefined
  readonly score: number
  /** Details that an earlier question lent. */
  readonly kept: readonly string[]
}

export interface WeighedChoice extends Choice {
  readonly signs: Signs
}

/** Intents that are no question about details. */
export const aside = new Map([
  ['handbook', 'handbook'],
  ['trouble', 'handbook'],
  ['smalltalk', 'smalltalk'],
  ['notours', 'notours'],
] as const) as ReadonlyMap<string, 'handbook' | 'smalltalk' | 'notours'>

/** What changes something is never guessed where it may be something else as well. */
const surely = 0.5
/** Nor is a figure that takes nothing of what is told. */
const surelyFigure = 0.6

/** Likelihoods are no smaller. */
const least = 1e-9

/** So many intents are tried: one that is less likely is not what somebody means. */
const tried = 5

/** A sentence as a command reads it. */
export interface Reading {
  readonly values: readonly Candidate[]
  /** Details told in free words. */
  readonly free: Kept
}

/** What it tells in words stands above a value in it: "lift the 1C limit". */
export function fitRead(command: CommandWords, { values, free }: Reading, kept: Kept = {}, before?: PackTold): Fitted {
  const fitted = fitTo(command, values, { ...kept, ...free }, before)
  return { ...fitted, options: { ...fitted.options, ...free } }
}

/** All that decides which command is meant. */
export interface Said {
  readonly text: string
  readonly values: readonly Candidate[]
  readonly ranked: readonly Ranked[]
  readonly vocabulary: Vocabulary
  /** How a command reads the sentence. */
  readonly readBy: (command: CommandWords) => Reading
  /** What an earlier question lends to a command. */
  readonly lentTo: (command: CommandWords) => { readonly kept: Kept; readonly before?: PackTold | undefined }
  /** How surely the handbook answers, 1 and above where it does. */
  readonly inHandbook: number
}

/** As `choices`; `isFirst` says that nothing was asked before. */
export function choicesAt(isFirst: boolean, said: Said): readonly Choice[] {
  const found = choices(said)
  const isOfWords = asksReason.test(said.text) || isLabelTakenAlong(said.text, said.values)
  return isFirst && !isOfWords ? [...withoutPack(found[0], said), ...found] : found
}

/** Best first. */
export function choices(said: Said): readonly WeighedChoice[] {
  const { text, values, ranked, vocabulary, inHandbook } = said
  const [isAboutIt, isWhoMay] = [asksAboutIt.test(text), values.length === 0 && whoMay.test(text)]
  // An amendment of nothing is none: what else the sentence may be shares its likelihood.
  const own = bySigns(ranked, text, values, vocabulary).filter(({ intent }) => intent !== 'amend')
  const whole = own.reduce((sum, { share }) => sum + share, 0) || 1
  // What the handbook surely answers is meant, however little it sounds like other questions for it.
  const likely = own.filter(({ intent }, index) => index < tried || (intent === 'handbook' && inHandbook >= 1))
  return likely
    .map(({ intent, share: ofAll }): Omit<WeighedChoice, 'score'> => {
      const share = ofAll / whole
      const likely = Math.log(Math.max(share, least))
      const command = aside.has(intent) ? undefined : vocabulary.find(({ name }) => name === intent)
      if (!command) {
        const isOfHandbook = aside.get(intent) === 'handbook'
        const idleWithPack = Number(!isOfHandbook && tellsOfPacks(values))
        const signs = { likely, idleWithPack, ...(isOfHandbook ? signsOfHandbook(values, inHandbook) : undefined) }
        return { intent, fitted: undefined, signs, kept: [] }
      }
      const { kept, before } = said.lentTo(command)
      const own = said.readBy(command)
      const fitted = fitRead(command, own, kept, before)
      const signs = {
        likely,
        ...signsOfFit(command, fitted, own.values),
        askedAbout: Number((command.changes === true && isAboutIt) || isWhoMay),
        unsureList: Number(share < surely && values.length === 0 && isList(fitted)),
        unsureChange: Number(share < surely && command.changes === true),
        unsureFigure: Number(share < surelyFigure && inHandbook > 1 && isFigureOfNone(fitted, own)),
      }
      return { intent, fitted, signs, kept: Object.keys(kept).filter(name => fitted.options[name] === kept[name]) }
    })
    .map(choice => ({ ...choice, score: weighed(choice.signs) }))
    .toSorted((a, b) => b.score - a.score)
}

/** An answer to anybody, as it takes nothing of what is told. */
const isFigureOfNone = (fitted: Fitted, { values, free }: Reading): boolean =>
  !isList(fitted) &&
  fitted.missing === undefined &&
  fitted.left.length === values.length &&
  Object.keys(free).length === 0

/** Less likely than this it is not clear what is asked. */
const clear = 0.25

/** "8 min at 4 A", "300 W on 6S, how many amps": what lacks a pack as a charge, another command answers without one. */
function withoutPack(best: Choice | undefined, { values: sentence, vocabulary, readBy }: Said): readonly Choice[] {
  const isOpen = best?.fitted
    ? best.fitted.missing !== undefined || best.fitted.left.length > 0
    : best?.intent === 'handbook' && sentence.filter(({ text }) => /\d/.test(text)).length > 1
  if (!best || (best.score >= clear && !isOpen)) return []
  return vocabulary.flatMap((command): readonly Choice[] => {
    const fitted = command.alone && fitTo(command, readBy(command).values)
    // Volts of cells one by one are judged, whatever they are to be charged with.
    // A charge ends full anyway.
    const isSpare = ({ kind, text }: Candidate) =>
      text === 'full' || (fitted?.options.volts !== undefined && (kind === 'rate' || kind === 'current'))
    const isWhole = fitted && fitted.missing === undefined && fitted.left.every(isSpare)
    return isWhole && command.alone?.(fitted.options, best.intent)
      ? [{ intent: command.name as Intent, fitted, score: Math.max(best.score, clear), kept: [] }]
      : []
  })
}

const opening = String.raw`^\W*(?:(?:and|so|but|ok|hi|hello|please) )*`
const yesOrNo = String.raw`(?:why|how come|is|are|does|do (?!it|that|this)|(?:may|can|could|would|will) (?!you|we|i|u)\w+|who (?!(?:has |have )?(?:set|did|put|\w+ed)\b)\w+)\b`
/** "What happens if", "who may", "even if" too: it asks about a change, and does not want it made. */
const asksAboutIt = new RegExp(
  String.raw`${opening}(?:${yesOrNo}|(?:how (?:long|far|often)|what (?!about)|who|whose|which)\b)|\b(?:even if|although|even though)\b`,
  'i',
)

/** "Why is", but not "why not 3C": what it is said of is not to be worked out. */
const asksReason = new RegExp(String.raw`${opening}(?:why\b(?! not)|how come\b)`, 'i')

/** It asks about people, and about nothing that a command works out. */
const whoMay = /\bwho (?:may|can|could|should|is|gets?|has|decides?)\b|\b(?:allowed|able|permitted|right) to\b/i

/** How well a command takes what is told, as a share of how well it might. */
export const takes = (command: CommandWords, fitted: Fitted, values: readonly Candidate[]): number =>
  weighed(signsOfFit(command, fitted, values))
