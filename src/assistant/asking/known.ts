// A question that was understood becomes its reply: its command answers, and what was taken for granted is said.

import { randomUUID } from 'node:crypto'
import type { KeptDanger } from '../../charging/situation/kept.ts'
import { chemistries } from '../../charging/things/chemistries.ts'
import type { Locale } from '../../ground/locale.ts'
import { present } from '../../ground/present.ts'
import { Problem } from '../../ground/problem.ts'
import type { Text } from '../../ground/text.ts'
import { ofChanges } from '../../language/frames/theme.ts'
import { together } from '../../language/frames/told-dangers.ts'
import { cellsAssumed, chemistryAssumed, toldBefore } from '../../language/reading/told/assumed.words.ts'
import { withRates, writeQuestion } from '../../language/sentence/question.ts'
import type { KitKind } from '../../memory/kit.ts'
import { faultOfMemory } from '../../memory/memory-error.ts'
import { yesOrNo } from '../asking-back/ask-back.words.ts'
import type { FaultListener } from '../fault-listener.ts'
import { ownersFor, withNames } from '../kit/kit-names.ts'
import type { Registry } from '../registry.ts'
import { completeReply, inLines, type Reply } from '../reply.ts'
import { alternatives } from './alternatives.ts'
import type { Around, Known } from './around.ts'
import { tooMuchAtOnce } from './asking.words.ts'
import { unsure } from './confirming.ts'
import { dangerReply, dangersAt } from './danger-first.ts'
import { faultReply, problemReply } from './failures.ts'
import { understand } from './inputs.ts'
import { lateness } from './late.ts'
import { notRead, notSaved } from './lookup.words.ts'
import { keptFor, notesOffered } from './remembering.ts'
import { pointed, tappable, withNearestName } from './tappable.ts'
import { toldWith, withTold } from './told-with.ts'

export async function answerKnown(around: Around, known: Known): Promise<Reply> {
  const { registry, conversation, onFault } = around
  const { question, used, assumed, dangers, understanding } = known
  const isLate = lateness(around.context, around.context.now) !== undefined
  const doubts = isLate ? [...known.doubts, 'askedLongAgo' as const] : known.doubts
  const { kept, names } = keptFor(known.kept, around, question, used)
  const context = { ...around.context, dangers, doubts, kept }
  const { locale } = context
  const { command } = question
  let readAs = around.typed

  function failed(error: unknown): Reply {
    if (!(error instanceof Problem)) return faultOf(onFault, error, registry, command, readAs, locale)
    const isChange = registry.find(command)?.changes
    // A name that is to be kept tells nothing of a pack.
    const heard = isChange ? dangers : [...dangers, ...dangersAt(error)]
    const { awaits } = error.details
    const pending = awaits === undefined ? undefined : { missing: { option: awaits }, choices: [], told: undefined }
    if (pending) conversation.keep({ question, pending, doubts, names })
    else if (understanding && isChange) conversation.keepAbout(ofChanges)
    else if (understanding) conversation.keep({ question, pending: undefined, doubts, names })
    if (heard.length > 0) return dangerReply({ dangers: heard }, readAs, understanding, locale)
    const told =
      error === tooMuchAtOnce ? error.offering([{ label: readAs, question: writeQuestion(question) }]) : error
    const offered = tappable(pointed(told, around.typed, understanding?.values), command, registry, locale)
    return { ...problemReply(command, readAs, offered, locale, registry.find(command)), understood: understanding }
  }

  /** A saved name that is nearly what was typed is meant rather than the example. */
  async function named(error: unknown): Promise<unknown> {
    if (!(error instanceof Problem) || !error.details.token) return error
    const saved = await context.lookup.memory.kit.startingWith(ownersFor(context), '', kitKinds, mostNames)
    return withNearestName(error, around.typed, saved)
  }

  try {
    const definition = registry.get(command)
    if (definition.moderators && !context.asker.moderates) throw definition.moderators
    const recalled = await definition.recall?.(question.options, used, { ...context, memory: context.lookup.memory })
    if (recalled?.instead) return await answerKnown(around, { ...known, question: recalled.instead })
    const understood = understand(definition, { ...recalled?.options, ...question.options }, locale)
    readAs = withNames(understood.readAs, used, locale)
    const { frame, about: since } = conversation.talk
    const notSure = unsure(definition, known, readAs, locale, isLate)
    const last = since === undefined ? (frame?.question.command ?? command) : command
    const isNext = !notSure && last !== command && registry.find(last)?.changes === true
    const sure = (understanding && (await definition.confirm?.(understood.inputs, context, isNext))) ?? notSure
    // A danger is answered first, and nothing is changed meanwhile.
    const sounds = doubts.filter(doubt => doubt.startsWith('maybe'))
    if (sure && dangers.length + sounds.length > 0)
      return dangerReply({ dangers, doubts: sounds }, readAs, understanding, locale)
    if (sure) {
      conversation.keep({ question: understood.question, pending: undefined, doubts, names, waits: true })
      return {
        ...problemReply(command, readAs, yesOrNo(sure, writeQuestion(understood.question)), locale, definition),
        understood: understanding,
      }
    }
    const answered = async (changed: object = {}): Promise<Reply> => {
      const inside = { ...context, learned: recalled?.learned, ...changed }
      const answer = await definition.answer(understood.inputs, inside)
      const others = doubts.includes('chemistryAssumed')
        ? await alternatives(definition, understood.question, answer, inside)
        : []
      const { stood = [], leaves = [], followUps = [] } = answer
      const read = present([...assumed, stood.length > 0 ? toldBefore(stood) : undefined]).map(one => one(locale))
      const { assumed: rests = [], alsoAssumed: also = rests } = answer
      const before = [...read, ...(recalled?.assumed ?? [])]
      const said = new Set([...understood.assumed.map(one => one(locale)), ...before, ...rests])
      const led = answer.verdict === 'go with care' ? ofPackAssumed(locale) : noTexts
      const alsoAssumed = new Set([...before, ...also]).difference(led)
      const lines = [...(answer.lines ?? [answer.headline]), ...others]
      const told = toldWith(command, [...dangers, ...doubts, ...standing(stood)], registry)
      const { about } = understood.question.options
      // A greeting, a list or the handbook in between lets what was asked before stand.
      if (command === 'handbook') conversation.keepAbout(about ?? '')
      else if (Object.keys(understood.question.options).length > 0)
        conversation.keep({
          question: withRates(understood.question, question),
          pending: undefined,
          doubts,
          names,
          figures: answer.figures ?? [],
          typed: around.typed,
        })
      const { answeredBy } = definition
      if (answeredBy) {
        const pending = { missing: { option: answeredBy.option }, choices: [], told: undefined }
        conversation.keep({ question: { command: answeredBy.command, options: {} }, pending, doubts: [], names: [] })
      }
      // Who writes notation tries values; what is told in words is told of a pack.
      if (understanding && leaves.length > 0) {
        const left = leaves.map(one => ({ ...one, typed: around.typed, names, doubted: false }))
        conversation.keepTold(together(known.kept, left))
      }
      const reply = completeReply(
        { command, readAs, question: writeQuestion({ ...understood.question, told }) },
        {
          ...answer,
          ...inLines(lines),
          assumed: [...said],
          alsoAssumed: [...alsoAssumed],
          followUps: [...notesOffered(kept, used, context), ...followUps].map(next => ({
            ...next,
            question: withTold(next.question, told, registry),
          })),
        },
        locale,
      )
      return understanding ? { ...reply, understood: { ...understanding, dangers } } : reply
    }
    if (!definition.changes) return await answered()
    const asks = { ...understood.question, told: toldWith(command, [...dangers, ...doubts], registry) }
    const isApart = definition.apart === true
    return await context.once({ question: writeQuestion(asks), isApart, locale, work: answered, failed })
  } catch (error) {
    return failed(await named(error))
  }
}

const kitKinds: readonly KitKind[] = ['pack', 'charger', 'source']
const mostNames = 200

/** What an answer that stands under a doubt says in its first line already. */
const ofPackAssumed = (locale: Locale): ReadonlySet<Text> =>
  new Set([cellsAssumed(locale), ...chemistries.map(({ name }) => chemistryAssumed(name)(locale))])
const noTexts: ReadonlySet<Text> = new Set()

const standing = (stood: readonly KeptDanger[]) =>
  stood.map(({ danger, doubted }) => (doubted ? ('toldBefore' as const) : danger))

/** What only we can mend is told to whoever listens, and the asker gets its reference. A memory that is away comes back. */
export function faultOf(
  onFault: FaultListener,
  error: unknown,
  { find }: Registry,
  command: string,
  readAs: Text,
  locale: Locale,
): Reply {
  const reference = randomUUID().slice(0, 8)
  onFault(error, reference)
  if (faultOfMemory(error) !== undefined)
    return problemReply(command, readAs, find(command)?.changes ? notSaved : notRead, locale)
  return faultReply(command, readAs, reference, locale)
}
