// The assistant's commands as Discord's slash commands.

import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandSubcommandOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  type RESTPostAPIChatInputApplicationCommandsJSONBody,
} from 'discord.js'
import type { Entry } from '../../assistant/command.ts'
import { isOwn } from '../../assistant/personal.ts'
import type { Locale } from '../../ground/locale.ts'
import { type Localizations, localizations, translationsOf } from './localizations.ts'
import { aboutPrivate, aboutPrivateOwn } from './slash.words.ts'

export type SlashCommand = RESTPostAPIChatInputApplicationCommandsJSONBody

/** Every slash command has it besides its own options. */
export const privateOption = 'private'
const longestDescription = 100

/** Two-word names become subcommands. Throws an Error where a name is both a command and a family. */
export function slashCommands(commands: readonly Entry[], locale: Locale, table = localizations): SlashCommand[] {
  return [...families(commands)].map(([name, members]) => {
    const only = members.find(member => member.name === name)
    if (only && members.length > 1) throw new Error(`"${name}" is both a command and a family of commands`)
    return {
      type: ApplicationCommandType.ChatInput,
      ...entitled(name, only ? only.words(locale).summary : familySummary(members), table),
      options: only ? optionsOf(only, locale, table) : members.map(member => subcommand(member, locale, table)),
      integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
      contexts: [InteractionContextType.Guild, InteractionContextType.BotDM, InteractionContextType.PrivateChannel],
    }
  })
}

function families(commands: readonly Entry[]): Map<string, Entry[]> {
  return Map.groupBy(commands, ({ name }) => name.split(' ')[0] ?? name)
}

const lastWord = (name: string): string => name.split(' ')[1] ?? name
const familySummary = (members: readonly Entry[]): string => members.map(({ name }) => lastWord(name)).join(', ')

function subcommand(member: Entry, locale: Locale, table: Localizations): APIApplicationCommandSubcommandOption {
  return {
    type: ApplicationCommandOptionType.Subcommand,
    ...entitled(lastWord(member.name), member.words(locale).summary, table),
    options: optionsOf(member, locale, table),
  }
}

/** Quantities are strings: a number option would turn "0,1" into 1 where the comma is the decimal mark. */
function optionsOf(
  { name, takes, words }: Entry,
  locale: Locale,
  table: Localizations,
): APIApplicationCommandBasicOption[] {
  if (privateOption in takes) throw new Error(`"${name}" has an option of its own named "${privateOption}"`)
  const described = words(locale).takes
  const own = Object.entries(takes).map(
    ([option, { required }]) =>
      ({
        type: ApplicationCommandOptionType.String,
        ...entitled(option, described[option]?.about ?? '', table),
        required,
        autocomplete: true,
      }) as const,
  )
  return [
    ...own.filter(({ required }) => required),
    ...own.filter(({ required }) => !required),
    {
      type: ApplicationCommandOptionType.Boolean,
      ...entitled(privateOption, (isOwn(name) ? aboutPrivateOwn : aboutPrivate)(locale), table),
      required: false,
    },
  ]
}

function entitled(name: string, description: string, table: Localizations) {
  const name_localizations = translationsOf(name, table)
  const description_localizations = translationsOf(description, table)
  return {
    name,
    description:
      description.length > longestDescription ? `${description.slice(0, longestDescription - 1)}…` : description,
    name_localizations,
    description_localizations,
  }
}
