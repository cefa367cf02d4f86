// Answers an interaction, whichever way it came in: a slash command, what is being typed, or a button.

import {
  type APIApplicationCommandAutocompleteInteraction,
  type APIChatInputApplicationCommandInteraction,
  type APIInteraction,
  type APIMessageApplicationCommandInteraction,
  ApplicationCommandType,
  InteractionResponseType,
  InteractionType,
} from 'discord.js'
import { problemReply } from '../../assistant/asking/failures.ts'
import type { Occasion } from '../../assistant/occasion.ts'
import { isOwn } from '../../assistant/personal.ts'
import type { Reply } from '../../assistant/reply.ts'
import type { Locale } from '../../ground/locale.ts'
import { type Question, writeQuestion } from '../../language/sentence/question.ts'
import { asComposed, type Composed } from '../messages/compose.ts'
import { deliver, isAcknowledged } from '../messages/deliver.ts'
import { askedBy } from '../messages/later.ts'
import { afterPromise, type Responder } from '../messages/responder.ts'
import { describeFault } from '../platform/faults.ts'
import { alone, atOf, occasionOf, type ServerName } from '../platform/occasion.ts'
import { noWords, onlyModerators, privateQuestion, thatMessage } from './interactions.words.ts'
import { createPresses, type PressParts } from './presses.ts'
import { privateOption } from './slash.ts'
import { type Focused, readSlash } from './slash-input.ts'

/** Discord's limit for one suggestion; that there are 25 at most is the assistant's own. */
const longestChoice = 100

export interface InteractionParts extends PressParts {
  readonly serverName: ServerName
}

/** Never rejects: what cannot be delivered is logged, as there is nobody left to tell. */
export type AnswerInteraction = (interaction: APIInteraction, responder: Responder) => Promise<void>

export function createAnswerInteraction(parts: InteractionParts): AnswerInteraction {
  const { assistant, compose, serverName, patience_ms, log } = parts
  const { press, submit } = createPresses(parts)
  const rules = { inPlace: false, patience_ms }
  const startedAt_ms = Date.now()

  return async (interaction, given) => {
    try {
      const responder = atOf(interaction.id) < startedAt_ms ? afterPromise(given) : given
      const asking = occasionOf(interaction, serverName)
      if (!asking) return log.warn({ type: interaction.type }, 'an interaction without an asker is left')
      const occasion = { ...asking, asked: askedBy(interaction) }
      if (isSlash(interaction)) await slash(interaction, responder, occasion)
      else if (isAboutMessage(interaction)) await aboutMessage(interaction, responder, occasion)
      else if (interaction.type === InteractionType.ApplicationCommandAutocomplete)
        await suggest(interaction, responder, occasion)
      else if (interaction.type === InteractionType.MessageComponent) await press(interaction, responder, occasion)
      else if (interaction.type === InteractionType.ModalSubmit) await submit(interaction, responder, occasion)
      else log.warn({ type: interaction.type }, 'an interaction of a kind that we never offer is left')
      await assistant.delivered(occasion)
    } catch (error) {
      log.error({ error: describeFault(error), interaction: interaction.id }, 'an answer was not delivered')
    }
  }

  function slash({ data }: APIChatInputApplicationCommandInteraction, to: Responder, occasion: Occasion) {
    const { question, privately } = readSlash(data, assistant.registry.commands)
    const isPlain = typeof question === 'string'
    const isTheirs = !isPlain && isOwn(writeQuestion(question))
    if (privately ?? (isTheirs && !occasion.place.direct)) {
      const answer = isTheirs
        ? compose.ask(question, alone(occasion), 'brief')
        : askPrivately(question, alone(occasion))
      return deliver(answer, to, { ...rules, to: 'asker' }, log)
    }
    // What plain words are about shows only in their answer.
    if (!isPlain || privately === false || occasion.place.direct)
      return deliver(compose.ask(question, occasion, 'brief'), to, { ...rules, to: 'channel' }, log)
    const fitting = compose.ask(question, occasion, 'brief').then(answer => compose.forAsker(answer, occasion))
    return deliver(fitting, to, { ...rules, to: 'fitting' }, log)
  }

  /** What we would answer to a message of somebody; only whoever asked us sees it. */
  function aboutMessage({ data }: APIMessageApplicationCommandInteraction, to: Responder, occasion: Occasion) {
    const { content = '' } = data.resolved.messages[data.target_id] ?? {}
    const words = content.replace(/<[@#][^>]*>/g, ' ').trim()
    const answer =
      words === ''
        ? assistant
            .localeOf(occasion)
            .then(locale => asComposed(problemReply('', thatMessage(locale), noWords, locale)))
        : assistant.wouldAnswer(words, alone(occasion)).then(reply => compose.dress(reply, occasion, 'brief'))
    return deliver(answer, to, { ...rules, to: 'asker' }, log)
  }

  /** Answering in public what was meant to be private would be worse than not answering. */
  async function askPrivately(question: string | Question, occasion: Occasion): Promise<Composed> {
    const may = await assistant.mayAskPrivately(occasion).catch((error: unknown) => {
      log.error({ error: describeFault(error) }, 'who may ask privately cannot be read')
      return false
    })
    return may ? compose.ask(question, occasion, 'brief') : asComposed(publicOnly(await assistant.localeOf(occasion)))
  }

  function offered(question: string | Question, { option, text }: Focused, occasion: Occasion) {
    if (typeof question === 'string') return assistant.suggest(text, occasion)
    return assistant.complete(question.command, option, text, occasion)
  }

  async function suggest({ data }: APIApplicationCommandAutocompleteInteraction, to: Responder, occasion: Occasion) {
    const { question, focused } = readSlash(data, assistant.registry.commands)
    const values = focused ? await offered(question, focused, occasion) : []
    const choices = values
      .filter(value => value !== '' && value.length <= longestChoice)
      .map(value => ({ name: value, value }))
    const type = InteractionResponseType.ApplicationCommandAutocompleteResult
    await isAcknowledged(to.acknowledge({ type, data: { choices } }, []), log)
  }
}

const publicOnly = (locale: Locale): Reply =>
  problemReply('', privateQuestion(locale), onlyModerators(privateOption), locale)

function isSlash(interaction: APIInteraction): interaction is APIChatInputApplicationCommandInteraction {
  return (
    interaction.type === InteractionType.ApplicationCommand &&
    interaction.data.type === ApplicationCommandType.ChatInput
  )
}

function isAboutMessage(interaction: APIInteraction): interaction is APIMessageApplicationCommandInteraction {
  return (
    interaction.type === InteractionType.ApplicationCommand && interaction.data.type === ApplicationCommandType.Message
  )
}
