// Which of the likely intents is meant: the one that is likely and takes what the sentence holds.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Intent } from '../corpus/intents.ts'
import type { Ranked } from '../model/index.ts'
import type { CommandWords, Vocabulary } from '../sentence/vocabulary.ts'
import { type Fitted, fitTo, type Kept } from './fit.ts'
import { bySigns } from './joined.ts'
import { isToldGoal } from './slots.ts'
import type { PackTold } from './told-pack.ts'

export interface Choice {
  readonly intent: Intent
  /** Absent where the intent is no command. */
  readonly fitted: Fitted | undefined
  readonly score: number
  /** Details that an earlier question lent. */
  readonly kept: readonly string[]
}

/** Intents that are no question about details. */
export const aside = new Map([
  ['handbook', 'handbook'],
  ['trouble', 'handbook'],
  ['smalltalk', 'smalltalk'],
  ['notours', 'notours'],
] as const) as ReadonlyMap<string, 'handbook' | 'smalltalk' | 'notours'>

/** What changes something is never guessed where it may be something else as well. */
const [surely, unsurely] = [0.5, 0.6]

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

/**
 * Best first. `readBy` gives how a command reads the sentence; `lentTo` what an earlier question lends to it;
 * `inHandbook` how surely the handbook answers, 1 and above where it does; `isFirst` says that nothing was asked before.
 */
export function choices(
  ranked: readonly Ranked[],
  values: readonly Candidate[],
  vocabulary: Vocabulary,
  readBy: (command: CommandWords) => Reading,
  lentTo: (command: CommandWords) => { readonly kept: Kept; readonly before?: PackTold | undefined },
  inHandbook: number,
  text: string,
  isFirst: boolean,
): readonly Choice[] {
  const isYesOrNo = asksYesOrNo.test(text)
  const [isAboutIt, isWhoMay] = [asksAboutIt.test(text), values.length === 0 && whoMay.test(text)]
  // An amendment of nothing is none: what else the sentence may be shares its likelihood.
  const own = bySigns(ranked, text, values, vocabulary).filter(({ intent }) => intent !== 'amend')
  const whole = own.reduce((sum, { share }) => sum + share, 0) || 1
  // What the handbook surely answers is meant, however little it sounds like other questions for it.
  const likely = own.filter(({ intent }, index) => index < tried || (intent === 'handbook' && inHandbook >= 1))
  const found = likely
    .map(({ intent, share: ofAll }): Choice => {
      const share = ofAll / whole
      const command = aside.has(intent) ? undefined : vocabulary.find(({ name }) => name === intent)
      if (!command) return { intent, fitted: undefined, score: heeded(intent, share, values, inHandbook), kept: [] }
      const { kept, before } = lentTo(command)
      const own = readBy(command)
      const fitted = fitRead(command, own, kept, before)
      const isBare =
        values.every(isWord) && Object.keys({ ...kept, ...own.free }).length === 0 && (isYesOrNo || isOfPacks(command))
      return {
        intent,
        fitted,
        score:
          share *
          takes(command, fitted, own.values) *
          ((command.changes && isAboutIt) || isWhoMay ? 0.2 : 1) *
          (share >= surely ? 1 : values.length === 0 && isList(fitted) ? 0.4 : command.changes ? unsurely : 1) *
          // Nothing is told that could be worked out: what the handbook knows is asked in words.
          (isBare ? 0.4 ** inHandbook : 1),
        kept: Object.keys(kept).filter(name => fitted.options[name] === kept[name]),
      }
    })
    .toSorted((a, b) => b.score - a.score)
  return isFirst ? [...withoutPack(found[0], values, vocabulary, readBy), ...found] : found
}

/** "Storage", "the supply": it tells no number and no pack. */
const isWord = ({ typed, kind }: Candidate): boolean => kind !== 'chemistry' && !/\d/.test(typed)
const isOfPacks = ({ options }: CommandWords): boolean => options.some(({ kind }) => kind === 'pack')

/** Less likely than this it is not clear what is asked. */
const clear = 0.25

/** "8 min at 4 A", "300 W on 6S, how many amps": what lacks a pack as a charge, another command answers without one. */
function withoutPack(
  best: Choice | undefined,
  sentence: readonly Candidate[],
  vocabulary: Vocabulary,
  readBy: (command: CommandWords) => Reading,
): readonly Choice[] {
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
/** "Does it", "can anybody", "why is", "who sees": neither a list nor a number answers it. */
const asksYesOrNo = new RegExp(`${opening}${yesOrNo}`, 'i')
/** "What happens if", "who may", "even if" too: it asks about a change, and does not want it made. */
const asksAboutIt = new RegExp(
  String.raw`${opening}(?:${yesOrNo}|(?:how (?:long|far|often)|what (?!about)|who|whose|which)\b)|\b(?:even if|although|even though)\b`,
  'i',
)

/** It asks about people, and about nothing that a command works out. */
const whoMay = /\bwho (?:may|can|could|should|is|gets?|has|decides?)\b|\b(?:allowed|able|permitted|right) to\b/i

/**
 * How well what is no command answers: the handbook by what it holds, small talk where no pack is told. The surer the
 * handbook knows a question without figures, the less it matters what else the words sound like.
 */
function heeded(intent: Intent, share: number, values: readonly Candidate[], inHandbook: number): number {
  if (aside.get(intent) !== 'handbook') return share * (tellsOfPacks(values) ? 0.2 : 1)
  // Each pack that is told in full speaks against it, and so do several figures.
  const packs = values.filter(({ pack }) => pack?.capacity_Ah !== undefined).length
  const figures = values.filter(({ kind, text }) => kind !== 'count' && kind !== 'number' && /\d/.test(text)).length
  const told = packs + Math.max(0, figures - packs - 1) / 2
  if (inHandbook < 1) return share * 0.35 * 0.4 ** told
  return values.every(({ kind }) => kind === 'chemistry' || kind === 'board')
    ? share ** (1 / inHandbook)
    : share * 0.4 ** told
}

export const tellsOfPacks = (values: readonly Candidate[]): boolean =>
  values.some(({ kind }) => !['number', 'count', 'board', 'clock'].includes(kind))

const isJoining = ({ kind }: Candidate): boolean => kind === 'board' || kind === 'batch'

/** It takes no details: the words alone ask for it. */
const isList = ({ options, missing }: Pick<Fitted, 'options' | 'missing'>): boolean =>
  Object.keys(options).length === 0 && missing === undefined

/** A value that a command has no use for speaks against it, and so does a detail that it lacks. */
export function takes(command: CommandWords, { left, missing, options }: Fitted, values: readonly Candidate[]): number {
  const used = values.length === 0 ? 1 : 1 - left.length / values.length
  // Several packs where one is asked about: it is a question about several.
  const several = left.some(({ kind, text }) => kind === 'count' && Number(text) > 1)
  // Whoever tells a value asks for none of the lists that take no details.
  const isBareList = isList({ options, missing }) && tellsOfPacks(values)
  // Volts of several cells are no state of one.
  const volts = left.filter(({ kind, text }) => kind === 'state' && /V/.test(text))
  const isReadings = volts.length > 1 || volts.some(({ holders }) => holders === 'rest')
  // Where a pack is to go is what somebody wants.
  const goes = left.some(isToldGoal)
  // A list of one pack, and nothing that several hang on: it is a question about that pack.
  const { packs, chargers, ports, places } = options
  const isSession = command.options.some(({ kind }) => kind === 'session packs')
  const alone = isSession && packs !== undefined && !/;|^\d+x/.test(packs) && !(chargers ?? ports ?? places)
  // How packs hang together decides what they get.
  const joined = left.some(isJoining)
  return (
    (joined ? 0.25 : 1) *
    (alone ? (values.some(isJoining) ? 0.5 : 0.15) : 1) *
    (0.4 + 0.6 * used) *
    (missing === undefined ? 1 : 0.35) *
    (several ? 0.5 : 1) *
    (isBareList || isReadings ? 0.2 : 1) *
    (goes ? 0.3 : 1)
  )
}
