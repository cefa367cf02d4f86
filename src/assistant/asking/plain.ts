// A plain sentence and its reply: what is meant is answered, danger first, or one thing is asked back.

import { maybe } from '../../charging/situation/doubts.ts'
import type { Locale } from '../../ground/locale.ts'
import type { Problem } from '../../ground/problem.ts'
import type { Text } from '../../ground/text.ts'
import { askedOf, entryOn } from '../../handbook/asked.ts'
import type { HandbookEntry } from '../../handbook/entry.ts'
import { asksLeave, asksToKnow } from '../../handbook/leave.ts'
import { asksNothing, opensAsking } from '../../language/conversation/asks-nothing.ts'
import { isFewWords } from '../../language/conversation/follow-up.ts'
import { ofAnswer } from '../../language/conversation/of-answer.ts'
import { yesOrNo } from '../../language/conversation/yes-or-no.ts'
import { themeOfWarmth } from '../../language/frames/theme.ts'
import { isOpen, standing } from '../../language/frames/told-dangers.ts'
import { toldFrame } from '../../language/frames/told-frame.ts'
import { aside } from '../../language/reading/choose.ts'
import { refuseImpossible } from '../../language/reading/impossible.ts'
import type { MeantOther } from '../../language/reading/meant.ts'
import { warmthAfter } from '../../language/reading/stands.ts'
import { apart } from '../../language/sentence/question.ts'
import { askedBack, choicesFor, notInHandbook, unclear } from '../asking-back/ask-back.ts'
import { nothingChanged, restNotClear } from '../asking-back/ask-back.words.ts'
import { cellOrPack } from '../asking-back/cell-or-pack.ts'
import { storedFor, takesTitle } from '../asking-back/stored.ts'
import { opened, withEntry, withLine } from '../layers/other-lines.ts'
import { completeReply, type Reply } from '../reply.ts'
import { generalCaution } from '../verdict.words.ts'
import type { Around } from './around.ts'
import { dangerReply } from './danger-first.ts'
import { problemReply } from './failures.ts'
import { answerKnown } from './known.ts'
import { askedBehind, asksWhatNow, namesAnew, ofStanding, pleads, pointsAt } from './of-before.ts'
import { hear } from './plainly.ts'
import { notesOffered, packNames, remember } from './remembering.ts'

export async function answerPlain(around: Around, text: string): Promise<Reply> {
  const { registry, context, typed, language, conversation, heard } = around
  const { talk } = conversation
  const { frame } = talk
  const { locale } = context
  if (frame?.waits) {
    const { question, doubts } = frame
    const said = yesOrNo(text)
    const nothingElse = { used: [], assumed: [], dangers: [], kept: [], understanding: undefined }
    conversation.keep({ ...frame, waits: false })
    if (said === 'yes') return answerKnown(around, { ...nothingElse, question, doubts })
    if (said === 'no') return leftAlone(question.command, typed, locale)
  }
  const {
    meant,
    dangers,
    suspected,
    about,
    isSure,
    isOfTheme,
    used,
    named,
    told: ofPacks,
    answers,
  } = await hear(text, language, heard, registry, context, talk)
  if (dangers.length === 0) refuseImpossible(named)
  const { understanding } = meant
  const { kept, isCorrected, isOfStanding } = remember(conversation, named, ofPacks, used, suspected)
  const tongue = language === 'en' ? [] : (['foreignTongue'] as const)
  const plain = { used, dangers, understanding, kept, assumed: [], doubts: [...suspected.map(maybe), ...tongue] }
  const theme = talk.about === undefined || !isFewWords(text) ? undefined : askedOf(talk.about).entry?.title
  const warm = theme && warmthAfter(theme, text)
  const { temperature = warm } = 'near' in meant ? meant : meant.question.options
  const warmth: Record<string, string> = temperature === undefined ? {} : { temperature }
  // What is told of a pack holds for what is asked next, whatever is answered now.
  const keepPack = () => {
    const frameOfPack = toldFrame(named, packNames(used), registry.vocabulary, frame)
    if (frameOfPack) conversation.keep(frameOfPack)
    return frameOfPack
  }
  const inHandbook = (of = about ?? (temperature ? themeOfWarmth(temperature) : text)) => {
    keepPack()
    return answerKnown(around, {
      ...ofStanding(asksToKnow(text) ? { ...plain, doubts: tongue } : plain, text),
      question: { command: 'handbook', options: { ...warmth, about: of } },
    })
  }
  const unanswered = (command: string, problem: Problem): Reply => ({
    ...problemReply(command, typed, problem, locale),
    understood: understanding,
  })
  const mayBe = () =>
    withLine(dangerReply({ doubts: suspected.map(maybe) }, typed, understanding, locale), restNotClear(locale))
  // What it may well tell is said, though nothing else can be.
  const notKnown = () => {
    const near = unclear(meant as MeantOther, registry, locale)
    const asked =
      meant.kind === 'handbook'
        ? unanswered('handbook', notInHandbook(askedOf(text).nearest, near))
        : unanswered('', near)
    return suspected.length === 0 ? asked : { ...mayBe(), followUps: asked.followUps }
  }
  // What was told turns out otherwise: what was asked before is answered anew.
  if (isCorrected && frame && !frame.pending && !namesAnew(text, used))
    return answerKnown(around, { ...plain, question: frame.question, doubts: frame.doubts })
  const stands = standing(kept, meant, frame)
  const repeated = () => dangerReply({ dangers: stands.map(({ danger }) => danger) }, typed, understanding, locale)
  const onlyTells = asksNothing(meant, text, registry.vocabulary)
  const isRepeated = isOfStanding && stands.length > 0 && dangers.length === 0 && onlyTells
  if (isRepeated) return repeated()
  // Whoever only pleads hears what was refused once more.
  if (talk.refused && dangers.length === 0 && pleads(meant, text, about)) {
    const again = () => dangerReply({ dangers: talk.refused ?? [] }, typed, understanding, locale)
    const todo = asksWhatNow.test(text) ? entryOn(talk.refused, talk.about ?? text)?.do : undefined
    if (talk.refused.length > 0) return todo === undefined ? again() : withLine(again(), locale.own(todo))
    if (frame) return answerKnown(around, { ...plain, ...frame, doubts: [...plain.doubts, ...frame.doubts] })
  }
  // What or why is answered too, below what is refused, where no leave is asked.
  const withKnown = (reply: Reply, on?: HandbookEntry): Reply => {
    const { entry, isClose, sureness } = askedOf(text)
    const asksWhy = asksReason.test(text)
    const asked = isClose || sureness > 1 ? entry : asksWhy ? on : undefined
    const isAsked = !asksLeave(text) && (asksWhy || asksToKnow(text) || meant.kind === 'handbook')
    return asked && isAsked ? withLine(reply, locale.own(asked.answer.join(' '))) : reply
  }
  const told = () => {
    keepPack()
    const on = entryOn(dangers, text)
    conversation.keepAbout(about ?? on?.title)
    const reply = dangerReply({ dangers }, typed, understanding, locale)
    const answered = withKnown(reply, on)
    return { ...answered, followUps: [...notesOffered(kept, used, context), ...reply.followUps] }
  }
  if (meant.kind === 'question' && dangers.length > 0 && onlyTells) return told()
  const isOpenAsked = frame?.pending !== undefined && talk.about === undefined
  const asksOf = isSure || isOpenAsked || dangers.length > 0 ? undefined : (ofAnswer(text) ?? pointsAt(meant, text))
  if (asksOf && talk.about !== undefined && about !== text) return opened(await inHandbook(talk.about), asksOf)
  if (asksOf && talk.about === undefined && frame)
    return opened(await answerKnown(around, { ...plain, ...frame, doubts: [...plain.doubts, ...frame.doubts] }), asksOf)
  if (warm && dangers.length === 0) return inHandbook(theme)
  // What goes on from the handbook's last answer is asked of it.
  if (isOfTheme && understanding.values.every(({ kind }) => kind === 'chemistry') && dangers.length === 0)
    return inHandbook()
  if (meant.kind === 'question' && dangers.length === 0) {
    const doubts = [...plain.doubts, ...meant.doubts]
    const open = cellOrPack({ ...meant.question, told: doubts }, text, locale)
    if (open) {
      conversation.keep({ ...open.frame, doubts, names: packNames(used) })
      return unanswered(meant.question.command, open.problem)
    }
  }
  if (meant.kind === 'question') {
    const reply = await answerKnown(around, { ...plain, ...meant, doubts: [...plain.doubts, ...meant.doubts] })
    if (about !== undefined && aside.has(understanding.intent)) return withEntry(reply, about, locale)
    // Nothing that was typed is wrong, but too little was told: what is asked in words is answered in words.
    // A question before a change stands: a yes to it must never be given to something else.
    const lacks =
      !registry.get(meant.question.command).changes &&
      reply.problem &&
      (reply.problem.token === undefined || (asksToKnow(text) && askedOf(about ?? '').sureness > 1)) &&
      !reply.verdict &&
      dangers.length === 0
    if (lacks && about !== undefined) return inHandbook()
    return dangers.length > 0 && asksReason.test(text) ? withKnown(reply) : reply
  }
  if (dangers.length > 0) return told()
  // A question tells nothing otherwise: "do I need a thicker one".
  if (isCorrected && !opensAsking.test(text))
    return dangerReply({ doubts: ['toldBefore'], kept }, typed, understanding, locale)
  if (stands.length > 0 && isOpen(meant, about)) return repeated()
  switch (meant.kind) {
    case 'smalltalk': {
      const rest = askedBehind(text)
      if (rest !== undefined) return answerPlain(around, rest)
      if (about === text && askedOf(text).isClose) return inHandbook()
      return answerKnown(around, { ...plain, question: { command: 'hello', options: {} } })
    }
    case 'handbook': {
      keepPack()
      if (about !== undefined || temperature !== undefined) return inHandbook()
      return askedOf(text).nearest.length > 0 && suspected.length === 0 ? inHandbook(text) : notKnown()
    }
    case 'asks back': {
      const command = registry.get(meant.question.command)
      const { question, missing, told: pack } = meant
      if (command.changes && suspected.length > 0) return mayBe()
      // Nobody is asked for the details of what they may not do.
      if (command.moderators && !context.asker.moderates) return answerKnown(around, { ...plain, question })
      const stored = await storedFor(missing, command, question.options, text, answers, context)
      // Which of none is no question: that there are none is the answer.
      if (answers.length === 0 && takesTitle(missing, command))
        return answerKnown(around, { ...plain, question: listed })
      // What somebody wants to know in words is not asked for in figures.
      if (
        meant.told === undefined &&
        about !== undefined &&
        !(command.changes && (stored ?? question.options.question))
      )
        return inHandbook()
      const choices = stored ?? choicesFor(meant, command)
      const { doubts } = apart(question.told ?? [])
      conversation.keep({ question, pending: { missing, choices, told: pack }, doubts, names: packNames(used) })
      return unanswered(command.name, askedBack(meant, command, choices, locale))
    }
    case 'unclear':
    case 'notours': {
      const of = keepPack()
      // A pack that is only told is asked about as by itself.
      if (of && !of.pending && about === undefined && meant.kind === 'unclear' && language === 'en')
        return answerKnown(around, { ...plain, ...of, doubts: [...plain.doubts, ...of.doubts] })
      const isElse = understanding.intent === 'notours' && understanding.likelihood >= 0.5 && !askedOf(text).isClose
      return about === undefined || isElse ? notKnown() : inHandbook()
    }
  }
}

const asksReason = /\b(?:why|how come|what happens|what can happen)\b/i

const listed = { command: 'answer list', options: {} }

const leftAlone = (command: string, readAs: Text, locale: Locale): Reply =>
  completeReply({ command, readAs }, { headline: nothingChanged(locale), cautions: [generalCaution(locale)] }, locale)
