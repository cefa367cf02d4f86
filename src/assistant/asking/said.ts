// A plain sentence with all that decides how it is answered, and the replies that it may get.

import { dangers } from '../../charging/situation/dangers.ts'
import { maybe } from '../../charging/situation/doubts.ts'
import type { Problem } from '../../ground/problem.ts'
import { askedOf, entryOn } from '../../handbook/asked.ts'
import type { HandbookEntry } from '../../handbook/entry.ts'
import { asksLeave, asksToKnow } from '../../handbook/leave.ts'
import { backTo } from '../../language/conversation/back-to.ts'
import { isOfPacks } from '../../language/conversation/behind/lend.ts'
import { asksNothing } from '../../language/conversation/heard/asks-nothing.ts'
import { type OfAnswer, ofAnswer } from '../../language/conversation/heard/of-answer.ts'
import { comesFromCold } from '../../language/dangers/relations/warmth.ts'
import type { Frame, Talk } from '../../language/frames/frame.ts'
import { themeOfWarmth } from '../../language/frames/theme.ts'
import { standing } from '../../language/frames/told-dangers.ts'
import { toldFrame } from '../../language/frames/told-frame.ts'
import { readTemperature } from '../../language/quantities/quantities.ts'
import { refuseImpossible } from '../../language/reading/impossible.ts'
import type { Meant, MeantOther } from '../../language/reading/meant.ts'
import { notInHandbook, unclear } from '../asking-back/ask-back.ts'
import { restNotClear } from '../asking-back/ask-back.words.ts'
import { withLine, withReason } from '../layers/other-lines.ts'
import type { Reply } from '../reply.ts'
import type { Around, Known } from './around.ts'
import { dangerReply } from './danger-first.ts'
import { problemReply } from './failures.ts'
import { answerKnown } from './known.ts'
import { ofStanding, pointsAt } from './of-before.ts'
import { type Heard, hear } from './plainly.ts'
import { notesOffered, packNames, type Remembered, remember } from './remembering.ts'
import { tappable } from './tappable.ts'

export interface Said extends Heard, Remembered {
  readonly around: Around
  readonly talk: Talk
  readonly kind: Meant['kind']
  readonly text: string
  readonly hasDanger: boolean
  /** What was told before and still stands of the pack. */
  readonly stands: Remembered['kept']
  readonly onlyTells: boolean
  readonly asksOf: OfAnswer | undefined
  /** How warm the cells are, in notation. */
  readonly temperature: string | undefined
  readonly plain: Omit<Known, 'question'>
}

/** Throws a Problem for what no pack is. */
export async function saidIn(asked: Around, typed: string): Promise<Said> {
  const back = backTo(typed, asked.conversation.talk.frame)
  const { text } = back ?? { text: typed }
  const around = back ? behind(asked, back.frame) : asked
  const { registry, context, language, conversation } = around
  const { talk } = conversation
  const heard = await hear(text, language, around.heard, registry, context, talk)
  const { meant, dangers, used, named } = heard
  const { temperature } = 'near' in meant ? meant : meant.question.options
  const suspected = leftOpen(heard.suspected, temperature, text)
  const hasDanger = dangers.length > 0
  if (!hasDanger) refuseImpossible(named)
  const remembered = remember(conversation, named, heard.told, used, suspected, text)
  const isOpenAsked = talk.frame?.pending !== undefined && talk.about === undefined
  return {
    ...heard,
    ...remembered,
    suspected,
    around,
    talk,
    kind: meant.kind,
    text,
    hasDanger,
    stands: standing(remembered.kept, meant, talk.frame),
    onlyTells: asksNothing(meant, text, registry.vocabulary),
    asksOf: heard.isSure || isOpenAsked || hasDanger ? undefined : (ofAnswer(text) ?? pointsAt(meant, text)),
    temperature,
    plain: {
      used,
      dangers,
      understanding: meant.understanding,
      kept: remembered.kept,
      assumed: [],
      doubts: [...suspected.map(maybe), ...inTongue(around)],
    },
  }
}

/** How warm cells are is for the core to judge where it is told in degrees, and where those are no room's. */
const leftOpen = (suspected: Said['suspected'], temperature: string | undefined, text: string) =>
  temperature === undefined
    ? suspected
    : suspected.filter(danger =>
        danger === 'coldPack' ? comesFromCold(text) : danger !== 'hotPack' || isHot(temperature),
      )
const isHot = (temperature: string): boolean => readTemperature(temperature) > 40

const behind = (around: Around, frame: Frame): Around => ({
  ...around,
  conversation: { ...around.conversation, talk: { ...around.conversation.talk, frame, about: undefined } },
})

const inTongue = ({ language }: Around) => (language === 'en' ? [] : (['foreignTongue'] as const))

/** What is told of a pack holds for what is asked next, whatever is answered now. */
export function keepPack({ around: { registry, conversation }, named, used }: Said) {
  const frame = toldFrame(named, packNames(used), registry.vocabulary, conversation.talk.frame)
  if (frame) conversation.keep(frame)
  return frame
}

/** The question, with what was only assumed of it. */
export function answered(
  { around, plain, suspected, meant }: Said,
  one: Pick<Known, 'question' | 'doubts'> & Partial<Known>,
): Promise<Reply> {
  const isOfClub = records.test(one.question.command) && meant.understanding.values.length === 0
  const open: ReadonlySet<string> = new Set(isOfClub ? suspected.map(maybe) : [])
  const doubts = plain.doubts.filter(doubt => !open.has(doubt))
  return answerKnown(around, { ...plain, ...one, doubts: [...doubts, ...one.doubts] })
}
/** What is read out of what the club or the asker keeps: no battery is dealt with, whatever the words sound like. */
const records = /^(?:history|answer list|house show|kit list|export me|remind list|lesson list)$/

/** The handbook's words on it. */
export function inHandbook(said: Said, of?: string, plain = withoutIdleDoubts(said)): Promise<Reply> {
  const { around, text, about, temperature } = said
  keepPack(said)
  const asked = of ?? about ?? (temperature === undefined ? text : themeOfWarmth(temperature))
  const known = ofStanding(plain, text)
  const warmth: Record<string, string> = temperature === undefined ? {} : { temperature }
  return answerKnown(around, { ...known, question: { command: 'handbook', options: { ...warmth, about: asked } } })
}

function withoutIdleDoubts({ around, plain, text }: Said): Said['plain'] {
  // A question mark behind what is told makes no question of it.
  const isToKnow = asksToKnow(text) && asksToKnow(text.replaceAll('?', ''))
  return isToKnow ? { ...plain, doubts: inTongue(around) } : plain
}

/** What is told of these, and nothing else. */
export const ofDangers = (
  { around: { typed, context }, meant }: Said,
  told: Parameters<typeof dangerReply>[0],
): Reply => dangerReply(told, typed, meant.understanding, context.locale)

export const repeated = (said: Said): Reply => ofDangers(said, { dangers: said.stands.map(({ danger }) => danger) })

/** What it may well tell is said, though nothing else can be. */
export const mayBe = (said: Said): Reply =>
  withLine(ofDangers(said, { doubts: said.suspected.map(maybe) }), restNotClear(said.around.context.locale))

export const unanswered = ({ around, meant }: Said, command: string, problem: Problem): Reply => ({
  ...problemReply(
    command,
    around.typed,
    tappable(problem, command, around.registry, around.context.locale),
    around.context.locale,
    around.registry.find(command),
  ),
  understood: meant.understanding,
})

/** A detail is asked back; where what was told before forbids the charge whatever it is, that is said first. */
export function lacking(said: Said, command: string, problem: Problem): Reply {
  const { around, meant, stands } = said
  const asked = unanswered(said, command, problem)
  const isPart = meant.kind === 'asks back' && meant.told !== undefined
  // "How long for a 3S" need not be about the one that is swollen.
  const anyhow = stands.filter(({ danger, of }) => !isPart || dangers[danger].stays !== 'lasts' || isOpen(of))
  if (anyhow.length === 0 || !around.registry.vocabulary.some(one => one.name === command && isOfPacks(one)))
    return asked
  const led = ofDangers(said, { dangers: anyhow.map(({ danger }) => danger) })
  return { ...withLine(led, problem.saidIn(around.context.locale).what), followUps: asked.followUps }
}
const isOpen = (of: object): boolean => Object.values(of).every(part => part === undefined)

export function notKnown(said: Said): Reply {
  const { around, meant, text, suspected } = said
  const near = unclear(meant as MeantOther, around.registry, around.context.locale)
  const isOfHandbook = meant.kind === 'handbook'
  const asked = unanswered(
    said,
    isOfHandbook ? meant.kind : '',
    isOfHandbook ? notInHandbook(askedOf(text).nearest, near) : near,
  )
  return suspected.length === 0 ? asked : { ...mayBe(said), followUps: asked.followUps }
}

/** What or why is answered too, below what is refused, where no leave is asked. */
export function withKnown({ around, text, meant }: Said, reply: Reply, on?: HandbookEntry): Reply {
  const { entry, isClose, sureness } = askedOf(text)
  const asksWhy = asksReason.test(text)
  const asked = isClose || sureness > 1 ? entry : asksWhy ? on : undefined
  const isAsked = !asksLeave(text) && (asksWhy || asksToKnow(text) || meant.kind === 'handbook')
  return asked && isAsked ? withReason(reply, around.context.locale.own(asked.answer.join(' '))) : reply
}

export const asksReason = /\b(?:why|how come|what happens|what can happen)\b/i

/** The dangers that it tells. */
export function told(said: Said): Reply {
  const { around, text, about, dangers, kept, used } = said
  keepPack(said)
  const on = entryOn(dangers, text)
  around.conversation.keepAbout(about ?? on?.title)
  const reply = ofDangers(said, { dangers })
  return { ...withKnown(said, reply, on), followUps: [...notesOffered(kept, used, around.context), ...reply.followUps] }
}
