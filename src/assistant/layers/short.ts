// The short answer: what a phone shows at once, composed here for every surface alike.

import type { Locale } from '../../ground/locale.ts'
import { present } from '../../ground/present.ts'
import { joined, type Text } from '../../ground/text.ts'
import type { Caution, Reply } from '../reply.ts'
import { budget, cutToRows, fits, whole } from './budget.ts'
import {
  expectedWords,
  moreWords,
  readingWords,
  standingLine,
  step,
  tryWords,
  verdictWords,
  warned,
} from './short.words.ts'

export type Part =
  | 'lead'
  | 'answer'
  | 'choice'
  | 'item'
  | 'reading'
  | 'standing'
  | 'start'
  | 'must'
  | 'caution'
  | 'care'
  | 'deference'

export interface ShortLine {
  readonly part: Part
  readonly text: Text
}

const whollySaid: readonly Part[] = ['must', 'caution', 'care', 'deference']
/** No surface cuts it: what must be said, which holds no words of the asker. */
export const isWhole = ({ part }: ShortLine): boolean => whollySaid.includes(part)

/** A line with shorter ways to say it, down to nothing at all where the last is undefined. */
interface Draft {
  readonly part: Part
  readonly ways: readonly [Text, ...(Text | undefined)[]]
}

/** What yields first where the lines are too many. */
const yielding: readonly Part[] = ['standing', 'reading', 'caution', 'item']
const mostCautions = 2
/** A reading that is too long is cut to so many rows, and to fewer where that is not enough. */
const readingRows = [2, 1] as const

const known = new WeakMap<Reply, readonly ShortLine[]>()

/** In reading order: verdict and answer, what was understood, what to look at before the start, cautions, deference. */
export function shortOf(reply: Reply): readonly ShortLine[] {
  const lines = known.get(reply) ?? composed(reply)
  known.set(reply, lines)
  return lines
}

function composed(reply: Reply): readonly ShortLine[] {
  const { problem, changed, deference } = reply
  if (reply.alone) return [{ part: 'answer', text: reply.headline }]
  const said = problem ? askedBack(reply) : isRefusal(reply) ? refused(reply) : answered(reply)
  const drafts = [...said, ...fixed('standing', ...present([changed])), ...fixed('deference', deference)]
  return fitted(drafts, reply.locale).map(({ part, ways: [text] }) => ({ part, text }))
}

/** A list that is too long ends in how many more there are. Most fit as they are: how wide each line is takes long to tell. */
function fitted(drafts: readonly Draft[], locale: Locale): readonly Draft[] {
  if (areFitting(drafts)) return drafts
  const whole = yielding.reduce(yielded, drafts)
  const at = drafts.findLastIndex(({ part }) => part === 'item') + 1
  if (at === 0 || itemsOf(whole) === itemsOf(drafts)) return whole
  const counted = (count: number): Draft => ({ part: 'item', ways: [moreWords(count, locale)] })
  // Room for that line, and for one on what to tap.
  const more = [counted(itemsOf(drafts)), counted(itemsOf(drafts))]
  const shown = yielding.reduce(yielded, drafts.toSpliced(at, 0, ...more))
  const last = shown.findLastIndex(({ part }) => part === 'item')
  return shown.toSpliced(last - 1, 2, counted(itemsOf(drafts) - itemsOf(shown) + 2))
}

const areFitting = (drafts: readonly Draft[]): boolean => fits(drafts.map(({ ways: [text] }) => text))
const itemsOf = (drafts: readonly Draft[]): number => drafts.filter(({ part }) => part === 'item').length

export const linesOf = (reply: Reply): readonly Text[] => shortOf(reply).map(({ text }) => text)

/** Takes shorter ways from the last line of a part upwards until all fit. */
function yielded(drafts: readonly Draft[], part: Part): readonly Draft[] {
  const at = drafts.findLastIndex(draft => draft.part === part && draft.ways.length > 1)
  if (at < 0 || areFitting(drafts)) return drafts
  const [, shorter, ...others] = (drafts[at] as Draft).ways
  const instead = shorter === undefined ? [] : [{ part, ways: [shorter, ...others] as const }]
  return yielded(drafts.toSpliced(at, 1, ...instead), part)
}

const fixed = (part: Part, ...texts: readonly Text[]): readonly Draft[] => texts.map(text => ({ part, ways: [text] }))
const giving = (part: Part, texts: readonly Text[]): readonly Draft[] =>
  texts.map(text => ({ part, ways: [text, undefined] }))
/** What must be said is said whole. */
const shortest = ({ short, text, must }: Caution): Text => (must ? text : (short ?? text))

/** The verdict stands before the first line. */
function opened({ verdict, lines, problem, locale }: Reply): readonly Text[] {
  const words = verdictWords(locale)
  const mark = problem && !problem.final && verdict === undefined ? words.ask : verdict && words[verdict]
  const [first, ...others] = lines
  return [joined([mark, first]), ...others]
}

function answered(reply: Reply): readonly Draft[] {
  const { readAs, alsoAssumed, leads, seeAlso, start, working, opens = [], locale, cautions } = reply
  const { musts = [], others = [] } = Object.groupBy(
    cautions.filter(one => !one.usual),
    one => (one.must ? 'musts' : 'others'),
  )
  const room = Math.max(0, mostCautions - musts.length)
  const cuts = readingRows.map(rows => locale.own(cutToRows(readingWords(readAs, [], locale), rows)))
  const reading = [...new Set([readingWords(readAs, alsoAssumed, locale), readingWords(readAs, [], locale), ...cuts])]
  return present([
    ...fixed('lead', ...opened(reply).slice(0, leads)),
    ...fixed('answer', ...opened(reply).slice(leads)),
    ...giving('item', isListing(reply) ? working : opens),
    isReadInto(reply) && !reply.lines.some(line => line.includes(readAs))
      ? { part: 'reading' as const, ways: reading as unknown as Draft['ways'] }
      : undefined,
    seeAlso && { part: 'standing' as const, ways: [standingLine(seeAlso, locale), undefined] as const },
    start && { part: 'start' as const, ways: [start] as const },
    ...[...musts, ...others.slice(0, room)].map((one, index) => {
      const text = index === 0 ? warned(shortest(one), locale) : shortest(one)
      return one.must || one.reason
        ? { part: one.must ? ('must' as const) : ('caution' as const), ways: [text] as const }
        : { part: 'caution' as const, ways: [text, undefined] as const }
    }),
    ...fixed('care', ...usual(cautions)),
  ])
}

/** Whether how it was read says more than what was asked. */
export const isReadInto = (reply: Reply): boolean =>
  reply.question !== undefined && !isListing(reply) && String(reply.readAs) !== reply.command

/** Where nothing is judged nor measured, what was listed is the answer. */
export const isListing = ({ lists, verdict, figures }: Reply): boolean =>
  lists === true && verdict === undefined && figures.every(({ unit }) => unit === 'count')

/** One line stands for all that is said of every charge. */
const usual = (cautions: readonly Caution[]): readonly Text[] => {
  const last = cautions.findLast(one => one.usual)
  return last ? [shortest(last)] : []
}

export const isRefusal = ({ problem, verdict }: Reply): boolean => !problem && verdict === 'do not charge'

/** The danger first, then what to do, step by step. */
function refused(reply: Reply): readonly Draft[] {
  const { cautions, opens = [], locale } = reply
  const [first, ...steps] = opened(reply)
  const todo = [...steps, ...cautions.filter(({ must }) => must).map(shortest)]
  return [
    ...fixed('answer', first as Text),
    ...fixed('must', ...numbered(todo, locale)),
    ...giving('caution', opens),
    ...fixed('care', ...usual(cautions)),
  ]
}

const numbered = (texts: readonly Text[], locale: Locale): readonly Text[] =>
  texts.length < 2 ? texts : texts.map((text, index) => step(index + 1, text, locale))

/** One thing that is missing or cannot be read, and what there is to choose from. */
function askedBack(reply: Reply): readonly Draft[] {
  const { problem, followUps, cautions, locale } = reply
  const choices = followUps.map(({ label }) => label)
  const isBrief = choices.every(({ length }) => length < budget.columns / 2)
  return [
    ...fixed('answer', ...opened(reply)),
    ...fixed(
      'answer',
      ...(problem?.token === undefined ? [] : [expectedWords(problem.token, problem.expected, locale)]),
    ),
    ...fixed(
      'choice',
      ...(choices.length === 0
        ? [tryWords(locale.own(problem?.example ?? ''), locale)]
        : choices.length === 1
          ? choices.map(one => tryWords(one, locale))
          : isBrief
            ? [
                joined(
                  numbered(choices, locale).map(choice => locale.own(whole(choice))),
                  ' · ',
                ),
              ]
            : numbered(choices, locale)),
    ),
    ...fixed('care', ...cautions.map(shortest)),
  ]
}
