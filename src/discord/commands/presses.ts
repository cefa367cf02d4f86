// Answers what people do with an answer: they press a button, or go on from it in words of their own.

import { type APIMessageComponentInteraction, type APIModalSubmitInteraction, MessageFlags } from 'discord.js'
import { problemReply } from '../../assistant/asking/failures.ts'
import { notRead } from '../../assistant/asking/lookup.words.ts'
import { lookedUp } from '../../assistant/lookup.ts'
import type { Occasion } from '../../assistant/occasion.ts'
import { amended } from '../../assistant/running/amend.ts'
import type { Assistant } from '../../assistant/running/assistant.ts'
import { Problem } from '../../ground/problem.ts'
import type { QuestionMemory } from '../../memory/memory.ts'
import type { Log } from '../../program/log.ts'
import { asComposed, type Compose, type Composed } from '../messages/compose.ts'
import { type Press, questionBehind, readCustomId } from '../messages/custom-id.ts'
import { deliver, isAcknowledged } from '../messages/deliver.ts'
import type { Responder } from '../messages/responder.ts'
import { describeFault } from '../platform/faults.ts'
import { alone, idOf } from '../platform/occasion.ts'
import { askFurther, wordsIn } from './further.ts'
import { earlierButton, noQuestionBehind } from './interactions.words.ts'

export interface PressParts {
  readonly assistant: Assistant
  readonly questions: QuestionMemory
  readonly compose: Compose
  readonly patience_ms: number
  readonly log: Log
}

export interface Presses {
  press(interaction: APIMessageComponentInteraction, to: Responder, occasion: Occasion): Promise<void>
  submit(interaction: APIModalSubmitInteraction, to: Responder, occasion: Occasion): Promise<void>
}

/** Whoever presses is answered, and nobody else sees it. */
export function createPresses(parts: PressParts): Presses {
  const { assistant, questions, compose, patience_ms, log } = parts
  const privately = { inPlace: false, to: 'asker', patience_ms } as const

  /** The question behind it, or why there is none. */
  async function behind(pressed: Press | undefined): Promise<string | Problem> {
    if (!pressed) return noQuestionBehind
    try {
      const found = await lookedUp(questionBehind(pressed, questions).then(question => ({ question })))
      return found ? (found.question ?? noQuestionBehind) : notRead
    } catch (error) {
      log.error({ error: describeFault(error) }, 'the question behind a button cannot be read')
      return notRead
    }
  }

  async function refusal(problem: Problem, occasion: Occasion): Promise<Composed> {
    log.warn('a button that we do not know was pressed')
    const locale = await assistant.localeOf(occasion)
    return asComposed(problemReply('', earlierButton(locale), problem, locale))
  }

  return {
    /** A message that only the presser sees is changed; one that others see is left, and the presser answered. */
    async press({ data: { custom_id }, message }, to, occasion) {
      const pressed = readCustomId(custom_id)
      if (pressed?.deed === 'further') {
        const modal = askFurther(custom_id, await assistant.localeOf(occasion))
        return void (await isAcknowledged(to.acknowledge(modal, []), log))
      }
      const question = await behind(pressed)
      if (question instanceof Problem) return deliver(refusal(question, occasion), to, privately, log)
      const isTheirs = occasion.place.direct || ((message.flags ?? 0) & MessageFlags.Ephemeral) !== 0
      if (!isTheirs) await assistant.tapped(occasion, idOf(message.id))
      // A layer stands beside its answer.
      const view = pressed?.deed ?? 'brief'
      const inPlace = isTheirs && view === 'brief'
      return deliver(compose.ask(question, alone(occasion), view), to, { ...privately, inPlace }, log)
    },

    async submit(interaction, to, occasion) {
      const words = wordsIn(interaction)
      const pressed = readCustomId(interaction.data.custom_id)
      const question = await behind(pressed)
      const answer =
        question instanceof Problem
          ? refusal(question, occasion)
          : compose.ask(amended(question, words, assistant.registry.vocabulary) ?? words, alone(occasion), 'brief')
      return deliver(answer, to, privately, log)
    },
  }
}
