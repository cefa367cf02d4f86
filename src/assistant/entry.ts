// Ties a command to its words: judges what was told, has computed what is permitted, judges that again, and says it.

import { type Judgement, judge } from '../charging/envelope/judge.ts'
import { limits } from '../charging/envelope/limits/index.ts'
import type { Limits } from '../charging/envelope/limits/row.ts'
import { reasonsOf, type Settled, settle } from '../charging/envelope/settle.ts'
import { type KeptDanger, markOf } from '../charging/situation/kept.ts'
import { situationOf, type Told } from '../charging/situation/situation.ts'
import type { Locale } from '../ground/locale.ts'
import { present } from '../ground/present.ts'
import type { Text } from '../ground/text.ts'
import type { Asked, Command, Entry, Takes, Unjudged, Words } from './command.ts'
import type { Context } from './context.ts'
import { handingOn } from './handed-on.ts'
import { type FigureWords, figureOf } from './quantified.ts'
import { type Answer, type Caution, inLines, type Reply } from './reply.ts'
import { cautionsOf, leadOf, refusalOf, sourcesOf, underLead } from './verdict.words.ts'

export const entry = <T extends Takes, R extends Unjudged, F extends string>(
  command: Command<T, R, F>,
  words: (locale: Locale) => Words<T, R, F>,
): Entry => ({ ...command, words, answer: (asked, context) => answerTo(command, words, asked as Asked<T>, context) })

async function answerTo<T extends Takes, R extends Unjudged, F extends string>(
  command: Command<T, R, F>,
  words: (locale: Locale) => Words<T, R, F>,
  asked: Asked<T>,
  context: Context,
): Promise<Answer> {
  const { house, dangers, doubts, kept, learned } = context
  const told = await command.situations(asked, context)
  // A strange word matters where a battery is dealt with.
  const heeded = told.length > 0 ? doubts : doubts.filter(doubt => doubt !== 'notUnderstood')
  const around = { house, dangers, doubts: heeded, kept, learned }
  // Also where no battery is dealt with, what the words told of danger is judged.
  const first = (told.length > 0 ? told : [{ act: 'look' as const }]).map(one => judge(situationOf(one, around)))
  const answer = await answerJudged(command, words, asked, context, told, first)
  return { ...answer, stood: stoodIn(first), leaves: first.flatMap(leavesOf) }
}

/** What was told before of the packs, each once. */
const stoodIn = (first: readonly Judgement[]): readonly KeptDanger[] => [
  ...new Set(first.flatMap(({ situation }) => situation.kept ?? [])),
]

/** What was found of a pack that stays with it. Of cells without a pack only readings of their own are told. */
function leavesOf({ found, situation: { pack, kindOnly, cells_V, doubts } }: Judgement) {
  if (!pack || (kindOnly && !cells_V)) return []
  return found.flatMap(({ key }) => {
    const danger = key in limits ? (limits as Limits)[key]?.leaves : undefined
    return danger ? [{ danger, of: markOf(pack, doubts, kindOnly) }] : []
  })
}

async function answerJudged<T extends Takes, R extends Unjudged, F extends string>(
  command: Command<T, R, F>,
  words: (locale: Locale) => Words<T, R, F>,
  asked: Asked<T>,
  context: Context,
  told: readonly Told[],
  first: readonly Judgement[],
): Promise<Answer> {
  const { locale } = context
  const refused = (settled: Settled, changed?: Text) =>
    refusal(settled, locale, changed, words(locale).whyNot?.(asked, settled.found))
  if (first.every(({ verdict }) => verdict === 'do not charge')) return refused(settle(first, []))
  const permits = told.map((_, index) => first[index]?.permit)
  const result = await command.compute(permits, asked, context)
  const deeds = command.deeds(result).map(({ permit, ...planned }) => judge(permit.situation, planned))
  const settled = settle(first, deeds)
  if (settled.verdict === 'do not charge') {
    return refused(settled, words(locale).changed?.(result, asked))
  }
  const answer = answered(settled, told.length > 0, command, words(locale), result, asked, locale)
  const other = command.restsOn(result)
  if (other) return restingOn(other, answer)
  const passed = command.handsOn?.(result)
  return passed ? handingOn(answer, passed) : answer
}

function refusal(settled: Settled, locale: Locale, changed?: Text, why: readonly Text[] = []): Answer {
  const lines = present([...refusalOf(settled, locale), changed])
  return {
    verdict: 'do not charge',
    ...inLines(lines),
    working: [...why, ...sourcesOf(settled, locale)],
    cautions: cautionsOf(settled, locale),
    reasons: reasonsOf(settled),
  }
}

function answered<T extends Takes, R extends Unjudged, F extends string>(
  settled: Settled,
  judged: boolean,
  command: Command<T, R, F>,
  words: Words<T, R, F>,
  result: R,
  asked: Asked<T>,
  locale: Locale,
): Answer {
  const { figures } = words as FigureWords<R, F>
  const leads = leadOf(settled, locale)
  const said = present(words.answer(result, asked, settled.verdict))
  const lines = underLead(leads, said)
  const assumed = present(words.assumed?.(result, asked) ?? []).map(one =>
    typeof one === 'string' ? { text: one } : one,
  )
  const isIdle = !judged && (command.changes || command.notStanding)
  const isVerdict = judged || settled.verdict !== 'go'
  return {
    verdict: isVerdict ? settled.verdict : undefined,
    ...inLines(lines),
    leads: lines.length - said.length,
    start: words.start?.(result, asked),
    lists: command.lists,
    figures: command.figures(result).flatMap(one => {
      if (one?.value === undefined) return []
      const label: Text | ((of: number, result: R) => Text) = figures[one.key]
      const name = typeof label === 'function' ? label(one.of ?? 1, result) : label
      return figureOf(
        { ...one, value: one.value },
        name,
        number => words.shown?.(number, one, result) ?? number,
        locale,
      )
    }),
    working: [...present(words.working?.(result, asked) ?? []), ...sourcesOf(settled, locale)],
    cautions: cautionsOf(settled, locale, isIdle),
    reasons: reasonsOf(settled),
    followUps: present(words.next?.(result, asked) ?? []),
    charts: words.charts?.(result, asked) ?? [],
    documents: command.documents(result),
    assumed: assumed.map(({ text, from }) => (from ? locale.say`${text} (${from})` : text)),
    alsoAssumed: assumed.flatMap(({ text, isShown }) => (isShown ? [] : [text])),
  }
}

/** What was judged of the other question stands: a refusal instead of the answer's own, cautions beside its own. */
function restingOn({ verdict, headline, lines, working, cautions, reasons }: Reply, answer: Answer): Answer {
  if (verdict === 'do not charge') {
    return { verdict, ...inLines([answer.headline, ...lines]), working, cautions, reasons }
  }
  const own = new Set(answer.cautions.map(({ key }) => key))
  const others = cautions.filter(({ key }) => !own.has(key))
  // What must be known of it stands in its headline.
  const first: readonly Caution[] = verdict === 'go with care' ? [{ key: 'restsOn', text: headline, must: true }] : []
  return {
    ...answer,
    verdict: verdict === 'go with care' ? verdict : answer.verdict,
    cautions: [...first, ...others, ...answer.cautions] as never as Answer['cautions'],
  }
}
