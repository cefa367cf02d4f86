// From a question to a message ready to send: asked, its pictures drawn, its buttons' questions kept.

import { randomUUID } from 'node:crypto'
import type { RawFile } from 'discord.js'
import { pictureLeftOut } from '../../assistant/asking/asking.words.ts'
import { faultReply } from '../../assistant/asking/failures.ts'
import type { Draw } from '../../assistant/draw.ts'
import { type Occasion, turnOf } from '../../assistant/occasion.ts'
import { isPersonal } from '../../assistant/personal.ts'
import { inLines, type Reply } from '../../assistant/reply.ts'
import { mayAskAgain } from '../../assistant/running/after-edit.ts'
import type { Assistant } from '../../assistant/running/assistant.ts'
import { within } from '../../ground/within.ts'
import type { Question } from '../../language/sentence/question.ts'
import type { QuestionMemory } from '../../memory/memory.ts'
import type { Log } from '../../program/log.ts'
import { describeFault } from '../platform/faults.ts'
import { alone } from '../platform/occasion.ts'
import { type Questions, questionsBehind } from './buttons.ts'
import { type Behind, isShort, type View } from './custom-id.ts'
import { type Picture, type Rendered, renderReply } from './render.ts'

/** Discord's apps are dark where nobody chose otherwise; a picture has a ground of its own and reads on both. */
const usualTheme = 'dark'

export interface ComposeParts {
  readonly assistant: Assistant
  readonly questions: QuestionMemory
  readonly draw: Draw
  readonly log: Log
}

export interface Composed {
  readonly reply: Reply
  readonly message: Rendered
  readonly files: readonly RawFile[]
}

/** By then a memory that is away has said so. */
const soon_ms = 10

/** None rejects: an answer that cannot be shown becomes one that says so. */
export interface Compose {
  ask(question: string | Question, occasion: Occasion, view: View): Promise<Composed>
  /** The same for the asker alone where it is for nobody else: asked anew, where that changes nothing twice. */
  forAsker(answer: Composed, occasion: Occasion): Promise<Composed>
  /** A reply that was given before. */
  dress(reply: Reply, occasion: Occasion, view: View): Promise<Composed>
}

export function createCompose({ assistant, questions, draw, log }: ComposeParts): Compose {
  /** What the assistant gives to many is rendered once. */
  let dressed = new WeakMap<Reply, Composed>()

  /** A failure costs the answer its buttons or its picture, not the asker the answer. */
  async function orWithout<T>(what: string, attempt: Promise<T>, without: T): Promise<T> {
    try {
      return await attempt
    } catch (error) {
      log.error({ error: describeFault(error) }, `an answer goes out without its ${what}`)
      return without
    }
  }

  /** To open a layer of an answer its question is asked again: not where that would change something again. */
  function buttonQuestions(reply: Reply): string[] {
    const changes = assistant.registry.find(reply.command)?.changes ?? false
    return [...new Set(questionsBehind(reply))].filter(text => !(changes && text === reply.question))
  }

  /** A memory that takes its time to write holds up no answer: it comes before somebody presses a button. */
  async function keepSoon(texts: readonly string[]): Promise<Questions> {
    const keeping = keepQuestions(questions, texts)
    const kept = texts.every(isShort) ? await keeping : await within(soon_ms, keeping)
    const lost = (error: unknown) => {
      dressed = new WeakMap()
      log.error({ error: describeFault(error) }, 'the buttons of an answer lead nowhere')
    }
    if (!kept) keeping.catch(lost)
    return kept ?? behindOf(texts, questions)
  }

  async function dress(reply: Reply, occasion: Occasion, view: View): Promise<Composed> {
    const before = view === 'brief' ? dressed.get(reply) : undefined
    if (before) return before
    const [charts, documents] = view === 'brief' ? [reply.charts, reply.documents] : [[], []]
    const [behind, drawn] = await Promise.all([
      orWithout('buttons', keepSoon(buttonQuestions(reply)), new Map()),
      orWithout('pictures', Promise.all(charts.map(chart => draw(chart, turnOf(occasion), usualTheme))), []),
    ])
    const told =
      drawn.length < charts.length ? { ...reply, ...inLines([...reply.lines, pictureLeftOut(reply.locale)]) } : reply
    const pictures: Picture[] = drawn.map((_, at) => ({
      filename: `chart-${at + 1}.png`,
      alternative: charts[at]?.alternative ?? '',
    }))
    const files: RawFile[] = [
      ...drawn.map((data, at) => ({ name: `chart-${at + 1}.png`, data: Buffer.from(data), contentType: 'image/png' })),
      ...documents.map(({ name, text, mediaType }) => ({ name, data: text, contentType: mediaType })),
    ]
    try {
      const composed = { reply, message: renderReply(told, { view, behind, pictures }), files }
      if (view === 'brief' && behind.size > 0 && files.length === 0) dressed.set(reply, composed)
      return composed
    } catch (error) {
      const reference = randomUUID().slice(0, 8)
      log.error({ error: describeFault(error), reference }, 'an answer cannot be shown')
      return asComposed(faultReply(reply.command, reply.readAs, reference, reply.locale))
    }
  }

  const ask: Compose['ask'] = async (question, occasion, view) =>
    dress(await assistant.answer(question, occasion), occasion, view)

  return {
    ask,
    forAsker: async (answer, occasion) => {
      const { command, question = '' } = answer.reply
      const isAnew = isPersonal(command) && !occasion.place.direct && mayAskAgain(question, assistant.registry)
      return isAnew ? ask(question, alone(occasion), 'brief') : answer
    },
    dress,
  }
}

/** A reply of our own making, without buttons or pictures. */
export const asComposed = (reply: Reply): Composed => ({ reply, message: renderReply(reply), files: [] })

/** So that buttons can ask them. */
export async function keepQuestions(questions: QuestionMemory, texts: readonly string[]): Promise<Questions> {
  const long = texts.filter(text => !isShort(text))
  if (long.length > 0) await questions.keepAll(long)
  return behindOf(texts, questions)
}

const behindOf = (texts: readonly string[], { idOf }: QuestionMemory): Questions =>
  new Map(texts.map((text): [string, Behind] => [text, isShort(text) ? { whole: text } : { id: idOf(text) }]))
