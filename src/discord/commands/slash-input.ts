// What an asker filled into a slash command: the question, and whether only they shall see the answer.

import {
  type APIApplicationCommandInteractionDataBasicOption,
  type APIApplicationCommandInteractionDataBooleanOption,
  type APIApplicationCommandInteractionDataOption,
  type APIChatInputApplicationCommandInteractionData,
  ApplicationCommandOptionType,
} from 'discord.js'
import type { Entry } from '../../assistant/command.ts'
import { commandAt } from '../../assistant/naming/shelf.ts'
import { askName, privateOption, questionOption } from './slash.ts'

export interface Focused {
  readonly option: string
  readonly text: string
}

type Data = Pick<APIChatInputApplicationCommandInteractionData, 'name'> & {
  readonly options?: readonly APIApplicationCommandInteractionDataOption[]
}

export function readSlash({ name, options = [] }: Data, commands: readonly Entry[]) {
  const [sub] = options
  const isFamily = sub?.type === ApplicationCommandOptionType.Subcommand
  const filled = (isFamily ? (sub.options ?? []) : options) as APIApplicationCommandInteractionDataBasicOption[]
  const texts = filled.flatMap(option => (option.type === ApplicationCommandOptionType.String ? [option] : []))
  const values = Object.fromEntries(texts.map(option => [option.name, option.value]))
  const focused = texts.find(option => option.focused)
  return {
    /** Plain words, or a command and its details. */
    question:
      name === askName
        ? (values[questionOption] ?? '')
        : { command: commandAt(name, isFamily ? sub.name : undefined, commands), options: values },
    /** Whether only the asker shall see the answer, where they say so. */
    privately: filled.find(isPrivate)?.value,
    /** The option being typed, where the asker is still typing. */
    focused: focused && { option: focused.name, text: focused.value },
  }
}

const isPrivate = (
  option: APIApplicationCommandInteractionDataBasicOption,
): option is APIApplicationCommandInteractionDataBooleanOption =>
  option.type === ApplicationCommandOptionType.Boolean && option.name === privateOption
