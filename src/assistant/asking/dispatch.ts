// One way in, one way out: a question becomes a reply here, whatever happens on the way.

import { randomUUID } from 'node:crypto'
import type { Locale } from '../../ground/locale.ts'
import { Problem } from '../../ground/problem.ts'
import type { Text } from '../../ground/text.ts'
import { type Question, writeQuestion } from '../../language/sentence/question.ts'
import type { Context } from '../context.ts'
import type { FaultListener } from '../fault-listener.ts'
import { readWithKit, withNames } from '../kit/kit-names.ts'
import type { Registry } from '../registry.ts'
import { completeReply, type Reply } from '../reply.ts'
import { notUsedWords } from './asking.words.ts'
import { asTyped, faultReply, problemReply } from './failures.ts'
import { understand } from './inputs.ts'

/**
 * Answers one question: text to be read, or a command with its options already apart. Never throws: a
 * Problem (the asker can mend it) and a fault (only we can) each become one reply, so that nothing is lost
 * and no stack trace reaches a chat. Before the club is known what goes wrong is said in `unknownClub`.
 */
export async function dispatch(
  registry: Registry,
  asked: string | Question,
  contextOf: () => Promise<Context>,
  onFault: FaultListener,
  unknownClub: Locale,
): Promise<Reply> {
  let command = ''
  let locale = unknownClub
  let readAs = asTyped(typeof asked === 'string' ? asked : writeQuestion(asked), locale)
  try {
    const context = await contextOf()
    locale = context.locale
    const { question, used } = await readWithKit(asked, registry, context.memory.kit, context)
    command = question.command
    const definition = registry.get(command)
    const recalled = await definition.recall?.(question.options, used, context)
    const understood = understand(definition, { ...recalled?.options, ...question.options }, locale)
    readAs = withNames(understood.readAs, used, locale)
    const answer = await definition.answer(understood.inputs, context)
    const assumed = new Set([
      ...understood.assumed.map(said => said(locale)),
      ...notUsed(question, locale),
      ...(recalled?.assumed ?? []),
      ...(answer.assumed ?? []),
    ])
    const canonical = writeQuestion(understood.question)
    return completeReply({ command, readAs, question: canonical }, { ...answer, assumed: [...assumed] }, locale)
  } catch (error) {
    if (error instanceof Problem) return problemReply(command, readAs, error, locale)
    const reference = randomUUID().slice(0, 8)
    onFault(error, reference)
    return faultReply(command, readAs, reference, locale)
  }
}

const notUsed = ({ notUsed: words = [] }: Question, locale: Locale): readonly Text[] =>
  words.length > 0 ? [notUsedWords(words, locale)] : []
