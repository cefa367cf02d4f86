// A plain sentence and its reply: one row for each way to answer, of which the first that holds does.

import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import { askedOf } from '../../handbook/asked.ts'
import { asksToKnow } from '../../handbook/leave.ts'
import { opensAsking } from '../../language/conversation/heard/asks-nothing.ts'
import { leavesIt, yesOrNo } from '../../language/conversation/heard/yes-or-no.ts'
import { comparesTimes } from '../../language/conversation/ways/compares.ts'
import type { Frame } from '../../language/frames/frame.ts'
import { aside } from '../../language/reading/choose.ts'
import type { MeantInPart, MeantQuestion } from '../../language/reading/meant.ts'
import { apart, writeQuestion } from '../../language/sentence/question.ts'
import { askedBack, choicesFor } from '../asking-back/ask-back.ts'
import { nothingChanged } from '../asking-back/ask-back.words.ts'
import { cellOrPack } from '../asking-back/cell-or-pack.ts'
import { storedFor, takesTitle } from '../asking-back/stored.ts'
import { opened, withAnswer, withEntry } from '../layers/other-lines.ts'
import { completeReply, type Reply } from '../reply.ts'
import { idleCaution } from '../verdict.words.ts'
import type { Around } from './around.ts'
import { besideBefore } from './asking.words.ts'
import { answerKnown } from './known.ts'
import { namesAnew, pleads } from './of-before.ts'
import { refusedAgain, refusedWhy } from './refused.ts'
import { packNames } from './remembering.ts'
import {
  answered,
  asksReason,
  inHandbook,
  keepPack,
  lacking,
  mayBe,
  notKnown,
  ofDangers,
  repeated,
  type Said,
  saidIn,
  told,
  withKnown,
} from './said.ts'

/** When it holds, and what it replies. */
type Row = readonly [holds: (said: Said) => unknown, reply: (said: Said) => Reply | Promise<Reply>]

/** Nothing but what was worked out before tells what it asks: "and at half the current". */
const goesFurther = ({ kind, understanding: { values, likelihood } }: Said['meant']): boolean =>
  kind === 'question' && values.length === 0 && likelihood === 1

/** The question before once more. */
const asBefore = (said: Said) => answered(said, said.talk.frame as Frame)

const rows: readonly Row[] = [
  // What was told turns out otherwise: what was asked before is answered anew.
  [
    ({ isCorrected, talk: { frame }, text, used }) => isCorrected && frame && !frame.pending && !namesAnew(text, used),
    ({ around, plain, talk }) => answerKnown(around, { ...plain, ...(talk.frame as Frame) }),
  ],
  [said => said.isOfStanding && said.stands.length > 0 && !said.hasDanger && said.onlyTells, repeated],
  // Whoever only pleads hears what was refused once more.
  [({ talk: { refused = [] }, hasDanger, ...said }) => refused.length > 0 && !hasDanger && pleads(said), refusedAgain],
  [({ talk: { refused, frame }, hasDanger, ...said }) => refused && frame && !hasDanger && pleads(said), asBefore],
  [({ kind, hasDanger, onlyTells }) => kind === 'question' && hasDanger && onlyTells, told],
  // Why it was refused: that stands, and the handbook's words come behind it.
  [({ asksOf, hasDanger, talk: { refused = [] } }) => asksOf && !hasDanger && refused.length > 0, refusedWhy],
  // Its reasons or its figures are asked of the answer before.
  [
    ({ asksOf, talk, about, text }) => asksOf && talk.about !== undefined && about !== text,
    async said => opened(await inHandbook(said, said.talk.about), said.asksOf ?? 'why'),
  ],
  [
    ({ asksOf, talk, around }) => asksOf && talk.about === undefined && talk.frame && !isChange(around, talk.frame),
    async said => opened(await asBefore(said), said.asksOf ?? 'why'),
  ],
  // What goes on from the handbook's last answer is asked of it.
  [
    ({ isOfTheme, meant, hasDanger }) =>
      isOfTheme &&
      meant.understanding.values.every(({ kind }) => kind === 'chemistry') &&
      !hasDanger &&
      !goesFurther(meant),
    said => inHandbook(said),
  ],
  [({ kind }) => kind === 'question', ofQuestion],
  [({ hasDanger }) => hasDanger, told],
  // A question tells nothing otherwise: "do I need a thicker one".
  [
    ({ isCorrected, text }) => isCorrected && !opensAsking.test(text),
    said => ofDangers(said, { doubts: ['toldBefore'], kept: said.kept }),
  ],
  [({ kind, about, text }) => kind === 'smalltalk' && about === text && askedOf(text).isClose, s => inHandbook(s)],
  [
    ({ kind }) => kind === 'smalltalk',
    ({ around, plain }) => answerKnown(around, { ...plain, question: { command: 'hello', options: {} } }),
  ],
  [({ kind, about, temperature }) => kind === 'handbook' && (about ?? temperature), said => inHandbook(said)],
  // What lies near takes no doubt away.
  [
    ({ kind, text }) => kind === 'handbook' && askedOf(text).nearest.length > 0,
    said => inHandbook(said, said.text, said.plain),
  ],
  [({ kind }) => kind === 'asks back', ofPart],
  [() => true, ofRest],
]

/** What was changed is not changed once more by asking about it. */
const isChange = ({ registry }: Around, { question }: Frame): boolean =>
  registry.find(question.command)?.changes === true

export async function answerPlain(around: Around, text: string): Promise<Reply> {
  const { typed, context, conversation } = around
  const { frame } = conversation.talk
  if (frame?.waits) {
    const { question, doubts } = frame
    const said = yesOrNo(text)
    const nothingElse = { used: [], assumed: [], dangers: [], kept: [], understanding: undefined }
    conversation.keep({ ...frame, waits: false })
    if (said === 'yes') return answerKnown(around, { ...nothingElse, question, doubts })
    if (said === 'no') return leftAlone(question.command, typed, context.locale)
  }
  if (frame && isChange(around, frame) && leavesIt(text))
    return leftAlone(frame.question.command, typed, context.locale)
  const said = await saidIn(around, text)
  const [, reply] = rows.find(([holds]) => holds(said)) as Row
  return reply(said)
}

/** It is answered, or asked whose volts were told. */
async function ofQuestion(said: Said): Promise<Reply> {
  const { around, text, about, hasDanger, used, plain } = said
  const { conversation, context, registry } = around
  const meant = said.meant as MeantQuestion
  const doubts = [...plain.doubts, ...meant.doubts]
  const open = hasDanger ? undefined : cellOrPack({ ...meant.question, told: doubts }, text, context.locale)
  if (open) {
    conversation.keep({ ...open.frame, doubts, names: packNames(used) })
    return lacking(said, meant.question.command, open.problem)
  }
  const reply = await besideLast(said, await answered(said, meant))
  if (about !== undefined && aside.has(meant.understanding.intent))
    return reply.problem ? inHandbook(said) : withEntry(reply, about, context.locale)
  // Nothing that was typed is wrong, but too little was told: what is asked in words is answered in words.
  // A question before a change stands: a yes to it must never be given to something else.
  const lacks =
    !registry.get(meant.question.command).changes &&
    reply.problem &&
    (reply.problem.token === undefined || (asksToKnow(text) && askedOf(about ?? '').sureness > 1)) &&
    !reply.verdict &&
    !hasDanger
  if (lacks && about !== undefined) return inHandbook(said)
  return hasDanger && asksReason.test(text) ? withKnown(said, reply) : reply
}

/** How long it takes, beside what was asked before with other details, where somebody wonders which is quicker. */
async function besideLast({ text, talk, meant, around: { context } }: Said, reply: Reply): Promise<Reply> {
  const now_s = timeOf(reply)
  if (now_s === undefined || !comparesTimes(text)) return reply
  const other = otherThan('question' in meant ? meant.question.options : {}, talk.frame)
  const before = other && (await context.ask(reply.command, writeQuestion({ command: reply.command, options: other })))
  const before_s = before && timeOf(before)
  return before && before_s !== undefined
    ? withAnswer(reply, besideBefore(now_s, before_s, before.readAs, context.locale))
    : reply
}

function otherThan(options: Options, frame: Frame | undefined): Options | undefined {
  if (!frame) return undefined
  const { options: before } = frame.question
  const isSame = Object.keys({ ...before, ...options }).every(name => before[name] === options[name])
  return isSame || before.pack === undefined ? otherThan(options, frame.before) : before
}
type Options = Frame['question']['options']

const timeOf = ({ command, verdict, figures }: Reply): number | undefined =>
  command === 'time' && verdict !== 'do not charge' ? figures.find(({ key }) => key === 'chargeTime')?.value : undefined

const listed = { command: 'answer list', options: {} }

/** What it lacks is asked for. */
async function ofPart(said: Said): Promise<Reply> {
  const { around, text, about, answers, suspected, used, plain } = said
  const { context, conversation, registry } = around
  const meant = said.meant as MeantInPart
  const { question, missing, told: pack } = meant
  const command = registry.get(question.command)
  if (command.changes && suspected.length > 0) return mayBe(said)
  // Nobody is asked for the details of what they may not do.
  if (command.moderators && !context.asker.moderates) return answerKnown(around, { ...plain, question })
  const stored = await storedFor(missing, command, question.options, text, answers, context)
  // Which of none is no question: that there are none is the answer.
  if (answers.length === 0 && takesTitle(missing, command)) return answerKnown(around, { ...plain, question: listed })
  // What somebody wants to know in words is not asked for in figures, nor is what the handbook surely has.
  const isOfWords = about !== undefined && (pack === undefined || askedOf(about).sureness > 1)
  if (isOfWords && said.stands.length === 0 && !(command.changes && (stored ?? question.options.question)))
    return inHandbook(said)
  const choices = stored ?? choicesFor(meant, command)
  const { doubts } = apart(question.told ?? [])
  conversation.keep({ question, pending: { missing, choices, told: pack }, doubts, names: packNames(used) })
  return lacking(said, command.name, askedBack(meant, command, choices, context.locale))
}

/** Nothing that is clear: a pack that is only told is asked about as by itself, and words of the handbook's are looked up. */
function ofRest(said: Said): Reply | Promise<Reply> {
  const { around, text, about, meant } = said
  const of = keepPack(said)
  const isAlone = about === undefined && meant.kind === 'unclear' && around.language === 'en'
  if (of && !of.pending && isAlone) return answered(said, of)
  const { intent, likelihood } = meant.understanding
  const isElse = intent === 'notours' && likelihood >= 0.5 && !askedOf(text).isClose
  return about === undefined || isElse ? notKnown(said) : inHandbook(said)
}

const leftAlone = (command: string, readAs: Text, locale: Locale): Reply =>
  completeReply({ command, readAs }, { headline: nothingChanged(locale), cautions: [idleCaution(locale)] }, locale)
