// The assistant's commands as Discord's slash commands.

import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandSubcommandOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  type RESTPostAPIChatInputApplicationCommandsJSONBody,
  type RESTPostAPIContextMenuApplicationCommandsJSONBody,
} from 'discord.js'
import type { Entry } from '../../assistant/command.ts'
import { shelfOf } from '../../assistant/naming/shelf.ts'
import { isOwn } from '../../assistant/personal.ts'
import type { Locale } from '../../ground/locale.ts'
import { aboutAsk, aboutFamily, aboutPrivate, aboutPrivateOwn, aboutQuestion, askAboutMessage } from './slash.words.ts'

type SlashCommand = RESTPostAPIChatInputApplicationCommandsJSONBody
type MessageCommand = RESTPostAPIContextMenuApplicationCommandsJSONBody
export type AnyCommand = SlashCommand | MessageCommand

/** Every slash command has it besides its own options. */
export const privateOption = 'private'
export const questionOption = 'question'
const longestDescription = 100

/** Above all of them: plain words, and what somebody else has written. */
export const askName = 'ask'
const everywhere = {
  integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
  contexts: [InteractionContextType.Guild, InteractionContextType.BotDM, InteractionContextType.PrivateChannel],
}
const inClubs = {
  integration_types: [ApplicationIntegrationType.GuildInstall],
  contexts: [InteractionContextType.Guild, InteractionContextType.BotDM],
}

/** Throws an Error where a name is both a command and a family. */
export function slashCommands(commands: readonly Entry[], locale: Locale): SlashCommand[] {
  const families = Map.groupBy(commands, command => shelfOf(command).family)
  const menu = [...families].map(([name, members]): SlashCommand => {
    const only = members.find(member => shelfOf(member).sub === undefined)
    const where = isOfClub(name) ? inClubs : everywhere
    if (only && members.length > 1) throw new Error(`"${name}" is both a command and a family of commands`)
    return {
      type: ApplicationCommandType.ChatInput,
      ...entitled(
        name,
        only ? only.words(locale).summary : (aboutFamily(name, locale) ?? members.map(subOf).join(', ')),
      ),
      options: only ? optionsOf(only, locale) : members.map(member => subcommand(member, locale)),
      ...where,
    }
  })
  return [...menu, asking(locale)]
}

/** All that we register. */
export const allCommands = (commands: readonly Entry[], locale: Locale): AnyCommand[] => [
  ...slashCommands(commands, locale),
  aboutMessage(locale),
]

function asking(locale: Locale): SlashCommand {
  return {
    type: ApplicationCommandType.ChatInput,
    ...entitled(askName, aboutAsk(locale)),
    options: [
      {
        type: ApplicationCommandOptionType.String,
        ...entitled(questionOption, aboutQuestion(locale)),
        required: true,
        autocomplete: true,
      },
      privateChoice(aboutPrivate(locale)),
    ],
    ...everywhere,
  }
}

/** Such a command has no description: https://docs.discord.com/developers/interactions/application-commands#message-commands */
function aboutMessage(locale: Locale): MessageCommand {
  return { type: ApplicationCommandType.Message, name: askAboutMessage(locale), ...everywhere }
}

const subOf = (command: Entry): string => shelfOf(command).sub ?? command.name

/** Of a club's things: of no use to somebody who has us with them elsewhere. */
const isOfClub = (family: string): boolean => family === 'club' || family === 'answer'

function subcommand(member: Entry, locale: Locale): APIApplicationCommandSubcommandOption {
  return {
    type: ApplicationCommandOptionType.Subcommand,
    ...entitled(subOf(member), member.words(locale).summary),
    options: optionsOf(member, locale),
  }
}

/** Quantities are strings: a number option would turn "0,1" into 1 where the comma is the decimal mark. */
function optionsOf({ name, takes, words }: Entry, locale: Locale): APIApplicationCommandBasicOption[] {
  if (privateOption in takes) throw new Error(`"${name}" has an option of its own named "${privateOption}"`)
  const described = words(locale).takes
  const own = Object.entries(takes).map(
    ([option, { required }]) =>
      ({
        type: ApplicationCommandOptionType.String,
        ...entitled(option, described[option]?.about ?? ''),
        required,
        autocomplete: true,
      }) as const,
  )
  return [
    ...own.filter(({ required }) => required),
    ...own.filter(({ required }) => !required),
    privateChoice((isOwn(name) ? aboutPrivateOwn : aboutPrivate)(locale)),
  ]
}

const privateChoice = (about: string): APIApplicationCommandBasicOption => ({
  type: ApplicationCommandOptionType.Boolean,
  ...entitled(privateOption, about),
  required: false,
})

function entitled(name: string, description: string) {
  return {
    name,
    description:
      description.length > longestDescription ? `${description.slice(0, longestDescription - 1)}…` : description,
  }
}
