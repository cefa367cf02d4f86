// What an asker filled into a slash command: the question, and whether only they shall see the answer.

import {
  type APIApplicationCommandInteractionDataBasicOption,
  type APIApplicationCommandInteractionDataBooleanOption,
  type APIApplicationCommandInteractionDataOption,
  type APIChatInputApplicationCommandInteractionData,
  ApplicationCommandOptionType,
} from 'discord.js'
import type { Question } from '../../language/sentence/question.ts'
import { privateOption } from './slash.ts'

export interface SlashInput {
  readonly question: Question
  /** Whether only the asker shall see the answer, where they say so. */
  readonly privately: boolean | undefined
  /** The option being typed, where the asker is still typing. */
  readonly focused?: { readonly option: string; readonly text: string }
}

type Data = Pick<APIChatInputApplicationCommandInteractionData, 'name'> & {
  readonly options?: readonly APIApplicationCommandInteractionDataOption[]
}

export function readSlash({ name, options = [] }: Data): SlashInput {
  const [sub] = options
  const isFamily = sub?.type === ApplicationCommandOptionType.Subcommand
  const filled = (isFamily ? (sub.options ?? []) : options) as APIApplicationCommandInteractionDataBasicOption[]
  const command = isFamily ? `${name} ${sub.name}` : name
  const texts = filled.flatMap(option => (option.type === ApplicationCommandOptionType.String ? [option] : []))
  const focused = texts.find(option => option.focused)
  return {
    question: { command, options: Object.fromEntries(texts.map(option => [option.name, option.value])) },
    privately: filled.find(isPrivate)?.value,
    focused: focused && { option: focused.name, text: focused.value },
  }
}

const isPrivate = (
  option: APIApplicationCommandInteractionDataBasicOption,
): option is APIApplicationCommandInteractionDataBooleanOption =>
  option.type === ApplicationCommandOptionType.Boolean && option.name === privateOption
