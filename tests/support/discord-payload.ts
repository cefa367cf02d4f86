// What Discord would say against a payload: the schemas of its OpenAPI document, and the rules that those miss.

import { isDeepStrictEqual } from 'node:util'
import * as spec from 'discord-api-spec/zod'

const schemas = {
  create: spec.CreateMessageInteractionCallbackRequestSchema,
  update: spec.UpdateMessageInteractionCallbackRequestSchema,
  suggestions: spec.ApplicationCommandAutocompleteCallbackRequestSchema,
  pong: spec.PongInteractionCallbackRequestSchema,
  edit: spec.IncomingWebhookUpdateRequestPartialSchema,
  followUp: spec.IncomingWebhookRequestPartialSchema,
  message: spec.MessageCreateRequestSchema,
  messageEdit: spec.MessageEditRequestPartialSchema,
  modal: spec.ModalInteractionCallbackRequestSchema,
  command: spec.ApplicationCommandUpdateRequestSchema,
} as const

export type PayloadKind = keyof typeof schemas

const callbackKinds: Readonly<Record<number, PayloadKind>> = {
  1: 'pong',
  4: 'create',
  5: 'create',
  6: 'update',
  7: 'update',
  8: 'suggestions',
  9: 'modal',
}

// biome-ignore lint/suspicious/noExplicitAny: payloads are whatever the test or the program under test gives.
type Json = any

/** Nothing in a channel is for one person alone: https://docs.discord.com/developers/resources/message#create-message-jsonform-params */
const ofMessages = (1 << 2) | (1 << 12) | (1 << 13) | (1 << 15)

/** Empty where Discord would take it. */
export function faultsOf(kind: PayloadKind, body: Json): string[] {
  const plain = JSON.parse(JSON.stringify(body))
  const result = schemas[kind].safeParse(plain)
  if (!result.success) return result.error.issues.map(issue => `${issue.path.join('.')}: ${issue.message}`)
  return [
    // The schemas drop what they do not know.
    ...(isDeepStrictEqual(plain, result.data) ? [] : ['it holds keys that Discord does not know']),
    ...(kind === 'command'
      ? (plain.type === 3 ? menuFaults : commandFaults)(plain)
      : messageFaults(plain.data ?? plain)),
    ...(kind === 'message' && ((plain.flags ?? 0) & ~ofMessages) !== 0 ? ['flags that no such message takes'] : []),
  ]
}

/** A window opens on a command or a button alone: https://docs.discord.com/developers/interactions/receiving-and-responding#interaction-response-object-interaction-callback-type */
const opensWindow = [2, 3]

export function callbackFaults(body: Json, asked: unknown = 2): string[] {
  const kind = callbackKinds[body?.type]
  if (kind === 'modal' && !opensWindow.includes(asked as number)) return ['a window opens on a command or a button']
  return kind ? faultsOf(kind, body) : [`type: ${body?.type} is no callback type`]
}

export function registrationFaults(commands: Json[]): string[] {
  return [
    ...commands.flatMap(command => faultsOf('command', command)),
    // https://docs.discord.com/developers/interactions/application-commands#registering-a-command
    ...(commands.length > 100 ? ['more than 100 commands'] : []),
    ...duplicates(commands.map(({ name }) => name)).map(name => `two commands are named ${name}`),
  ]
}

/** https://docs.discord.com/developers/interactions/application-commands */
const nameShape = /^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u

/** In the menu of a message: any case, spaces, no description and no options. */
const menuFaults = ({ name, description = '', options }: Json): string[] => [
  ...(name.length >= 1 && name.length <= 32 ? [] : [`"${name}" is no name`]),
  ...(description === '' && options === undefined ? [] : [`"${name}" has more than a name`]),
]

function commandFaults(command: Json): string[] {
  const options: Json[] = command.options ?? []
  const { name, description } = command
  const firstOptional = options.findIndex(({ required }) => !required)
  const lastRequired = options.findLastIndex(({ required }) => required)
  return [
    ...(nameShape.test(name) && name === name.toLowerCase() ? [] : [`"${name}" is no name`]),
    ...(description ? [] : [`"${name}" has no description`]),
    ...(firstOptional >= 0 && lastRequired > firstOptional ? [`"${name}" has a required option after others`] : []),
    ...duplicates(options.map(option => option.name)).map(twice => `"${name}" has two options named ${twice}`),
    ...(new Set(options.map(({ type }) => type === 1)).size > 1 ? [`"${name}" mixes subcommands and options`] : []),
    ...options.flatMap(commandFaults),
  ]
}

function messageFaults(message: Json): string[] {
  const embeds: Json[] = message.embeds ?? []
  const rows: Json[] = message.components ?? []
  const fields = embeds.flatMap(({ fields = [] }) => fields as Json[])
  const size = [
    ...embeds.flatMap(({ title, description, footer, author }) => [title, description, footer?.text, author?.name]),
    ...fields.flatMap(({ name, value }) => [name, value]),
  ].reduce((sum, text) => sum + (text?.length ?? 0), 0)
  const buttons = rows.flatMap(({ components = [] }) => components as Json[])
  const names = (message.attachments ?? []).map(({ filename }: Json) => filename)
  const pictures = embeds.flatMap(({ image }) => (image ? [image.url.replace('attachment://', '')] : []))
  return [
    // https://docs.discord.com/developers/resources/message#embed-object-embed-limits
    ...(size > 6000 ? [`${size} characters over all embeds`] : []),
    ...(fields.some(({ name, value }) => !name || !value) ? ['a field is empty'] : []),
    // https://docs.discord.com/developers/components/reference#legacy-message-component-behavior
    ...(rows.length > 5 ? [`${rows.length} action rows`] : []),
    // https://docs.discord.com/developers/components/reference#anatomy-of-a-component-custom-id
    ...duplicates(buttons.map(({ custom_id }) => custom_id)).map(id => `two buttons bear ${id}`),
    ...(buttons.some(({ label }) => !label) ? ['a button has no label'] : []),
    // https://docs.discord.com/developers/reference#editing-message-attachments-using-attachments-within-embeds
    ...pictures.filter(name => !names.includes(name)).map(name => `${name} is not attached`),
  ]
}

const duplicates = (names: readonly string[]): string[] => names.filter((name, at) => names.indexOf(name) !== at)
