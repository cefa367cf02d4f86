// Which slash commands Discord has of ours: set by the registration script, compared at every start.

import {
  type APIApplication,
  type APIApplicationCommand,
  type APIPartialGuild,
  makeURLSearchParams,
  REST,
  Routes,
} from 'discord.js'
import type { Entry } from '../../assistant/command.ts'
import { english } from '../../ground/locale.ts'
import type { Log } from '../../program/log.ts'
import { describeFault } from '../platform/faults.ts'
import { inviteLink } from '../platform/permissions.ts'
import { type AnyCommand, allCommands } from './slash.ts'

export interface Registered {
  /** The link by which a server's moderator lets us in. */
  readonly invite: string
  readonly count: number
  /** False where Discord had them all as they are. */
  readonly isNew: boolean
  /** The scopes that were emptied, so that no command shows twice. */
  readonly emptied: readonly string[]
}

export interface Access {
  /** Where Discord's REST API is, without its version. */
  readonly api: string
  readonly token: string
}

/** How far it came with the servers, for when it is broken off: of thousands none is looked at twice. */
export interface Progress {
  last(): string | undefined
  reached(server: string): void
}

/**
 * Overwrites the commands of one server, or of the application where none is given, where they differ, and empties the
 * other scope. Waits where Discord's limits say so.
 */
export async function registerCommands(
  { api, token }: Access,
  commands: readonly Entry[],
  serverId: string | undefined,
  progress: Progress = { last: () => undefined, reached: () => {} },
): Promise<Registered> {
  const rest = new REST({ api }).setToken(token)
  const applicationId = await applicationOf(rest)
  const wanted = allCommands(commands, english('.'))
  const isNew = differences(wanted, await commandsIn(rest, applicationId, serverId)).length > 0
  if (isNew) await rest.put(scope(applicationId, serverId), { body: wanted })
  const others = serverId === undefined ? serversOf(rest, progress.last()) : [undefined]
  const emptied: string[] = []
  for await (const other of others) {
    const there = await commandsIn(rest, applicationId, other)
    if (there.length > 0) {
      await rest.put(scope(applicationId, other), { body: [] })
      emptied.push(other === undefined ? 'everywhere' : `server ${other}`)
    }
    if (other !== undefined) progress.reached(other)
  }
  return { invite: inviteLink(applicationId), count: wanted.length, isNew, emptied }
}

/** A difference is only logged: a start must not change what a server's moderators have set up. */
export async function logDifference(
  rest: REST,
  commands: readonly Entry[],
  serverId: string | undefined,
  log: Log,
): Promise<void> {
  try {
    const there = await commandsIn(rest, await applicationOf(rest), serverId)
    const missing = differences(allCommands(commands, english('.')), there)
    if (missing.length > 0)
      log.warn({ commands: missing }, 'Discord has other commands than these; npm run discord:register')
  } catch (error) {
    log.warn({ error: describeFault(error) }, 'the commands that Discord has cannot be compared')
  }
}

async function commandsIn(rest: REST, applicationId: string, serverId: string | undefined) {
  return (await rest.get(scope(applicationId, serverId))) as APIApplicationCommand[]
}

/** The names of commands that Discord lacks, has otherwise, or has too many. */
export function differences(wanted: readonly AnyCommand[], there: readonly { readonly name: string }[]): string[] {
  const lacking = wanted.filter(
    command =>
      !holds(
        there.find(({ name }) => name === command.name),
        command,
      ),
  )
  const surplus = there.filter(({ name }) => !wanted.some(command => command.name === name))
  return [...lacking, ...surplus].map(({ name }) => name)
}

/** Whether `given` has everything that `wanted` says; Discord adds fields of its own and drops false and empty ones. */
function holds(given: unknown, wanted: unknown): boolean {
  if (Array.isArray(wanted)) {
    const list = Array.isArray(given) ? given : []
    return list.length === wanted.length && wanted.every((item, at) => holds(list[at], item))
  }
  if (typeof wanted === 'object' && wanted !== null) {
    return Object.entries(wanted).every(([key, value]) =>
      holds((given as Record<string, unknown> | undefined)?.[key], value),
    )
  }
  return given === wanted || (given === undefined && wanted === false)
}

async function applicationOf(rest: REST): Promise<string> {
  return ((await rest.get(Routes.currentApplication())) as APIApplication).id
}

/** In the order of their ids; Discord gives 200 at a time. */
async function* serversOf(rest: REST, after = '0'): AsyncIterable<string> {
  const page = (await rest.get(Routes.userGuilds(), { query: makeURLSearchParams({ after }) })) as APIPartialGuild[]
  for (const { id } of page) yield id
  const last = page.at(-1)
  if (last) yield* serversOf(rest, last.id)
}

const scope = (applicationId: string, serverId: string | undefined) =>
  serverId === undefined
    ? Routes.applicationCommands(applicationId)
    : Routes.applicationGuildCommands(applicationId, serverId)
