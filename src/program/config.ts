// The only reader of the environment: checks every variable, names the bad one, never prints a secret.

import { readFileSync } from 'node:fs'
import { config as dotenv } from 'dotenv'
import { z } from 'zod'
import { EndingError } from './ending.ts'

const list = z
  .string()
  .transform(text => text.split(/[\s,]+/).filter(Boolean))
  .pipe(z.array(z.string()))

const port = z.coerce.number().int().min(0).max(65535)

const variables = z.object({
  CHARGEHAND_DATA: z.string().min(1).default('data'),
  CHARGEHAND_LOG_LEVEL: z.enum(['debug', 'info', 'warn', 'error', 'silent']).default('info'),
  /** Health, readiness, metrics and Discord's HTTP interactions; none where absent. */
  CHARGEHAND_HTTP_PORT: port.optional(),
  /** From where the HTTP ports can be reached: this machine only, or "0.0.0.0" and "::" from everywhere. */
  CHARGEHAND_HTTP_HOST: z.string().min(1).default('127.0.0.1'),
  /** Health, readiness and metrics on a port of their own. */
  CHARGEHAND_HEALTH_PORT: port.optional(),
  /** Readiness and metrics only for whoever bears it. */
  CHARGEHAND_HEALTH_TOKEN: z.string().min(16, 'at least 16 characters').optional(),
  DATABASE_URL: z.url({ protocol: /^postgres(ql)?$/ }).optional(),

  DISCORD_TOKEN: z.string().min(1).optional(),
  /** How questions reach us: over a connection of ours, or as requests to the HTTP port. */
  DISCORD_INTERACTIONS: z.enum(['gateway', 'http']).default('gateway'),
  DISCORD_PUBLIC_KEY: z
    .string()
    .regex(/^[0-9a-f]{64}$/i, '64 hexadecimal digits')
    .optional(),
  /** Registers commands in this server only; everywhere where absent. */
  DISCORD_SERVER_ID: z
    .string()
    .regex(/^\d{15,21}$/, 'a number of 15 to 21 digits')
    .optional(),
  /** Connections to Discord's gateway, each for 2,500 servers at most. */
  CHARGEHAND_SHARDS: z.union([z.literal('auto'), z.coerce.number().int().min(1).max(500)]).default('auto'),
  DISCORD_API: z.url().default('https://discord.com/api'),

  MATRIX_HOMESERVER: z.url().optional(),
  MATRIX_USER: z
    .string()
    .regex(/^@[^:]+:.+$/, 'a full user id such as @chargehand:example.org')
    .optional(),
  MATRIX_PASSWORD: z.string().min(1).optional(),
  MATRIX_ACCESS_TOKEN: z.string().min(1).optional(),
  MATRIX_STORE_KEY: z.string().min(16, 'at least 16 characters').optional(),
  /** Opens what is kept on the server for a device that has lost everything. */
  MATRIX_RECOVERY_KEY: z.string().min(1).optional(),
  /** Who may verify us with emoji. */
  MATRIX_VERIFIERS: list.default([]),
  MATRIX_DEVICE_NAME: z.string().min(1).default('Chargehand'),
  MATRIX_PREFIX: z.string().min(1).max(20).default('!charge'),
  /** Whose invites are accepted: "anyone", or servers and people: "example.org @ada:other.org". */
  MATRIX_INVITES: list.default(['anyone']),
  /** Rooms to be in, by id or address: joined at the start, or knocked at. */
  MATRIX_ROOMS: list.default([]),
  /** Accounts that are no people, and never answered: an answer to one may set off a loop. */
  MATRIX_BOTS: list.default([]),
})

/** What Discord's requests need besides: the key that their signatures are checked with, and a port to come to. */
const neededForHttp = ['DISCORD_PUBLIC_KEY', 'CHARGEHAND_HTTP_PORT'] as const

const schema = variables.superRefine((config, context) => {
  if (config.DISCORD_INTERACTIONS !== 'http') return
  for (const name of neededForHttp.filter(key => config[key] === undefined)) {
    context.addIssue({ code: 'custom', path: [name], message: 'needed where DISCORD_INTERACTIONS is http' })
  }
})

/** The names of all variables that are read; secrets may also come from a file, by their name with _FILE. */
export const variableNames: readonly string[] = Object.keys(variables.shape)
export type Config = z.infer<typeof schema>

/** Variables that may come from a file named in a variable of the same name with _FILE. */
const secrets = [
  'DISCORD_TOKEN',
  'DATABASE_URL',
  'MATRIX_PASSWORD',
  'MATRIX_ACCESS_TOKEN',
  'MATRIX_STORE_KEY',
  'MATRIX_RECOVERY_KEY',
  'CHARGEHAND_HEALTH_TOKEN',
] as const

/** What is wrong with the environment, each fault with the variable's name and never its value. */
export class ConfigError extends EndingError {
  override name = 'ConfigError'

  constructor(message: string) {
    super(message, 'settings')
  }
}

/** Reads and checks the environment. Throws a ConfigError that names each bad variable. */
export function readConfig(environment: Readonly<Record<string, string | undefined>> = ownEnvironment()): Config {
  const parsed = schema.safeParse(withoutEmpty(withSecretFiles(environment)))
  if (parsed.success) return parsed.data
  const faults = parsed.error.issues.map(issue => `${issue.path.join('.')}: ${issue.message}`)
  throw new ConfigError(`The configuration cannot be used:\n  ${faults.join('\n  ')}`)
}

/** The configuration with every secret hidden, fit for a log. */
export function redacted(config: Config): Record<string, unknown> {
  const hidden = Object.fromEntries(secrets.filter(key => config[key]).map(key => [key, '(hidden)']))
  return { ...config, ...hidden }
}

/** The process's environment, and what a file .env beside the program adds to it. */
function ownEnvironment(): Readonly<Record<string, string | undefined>> {
  dotenv({ quiet: true })
  return process.env
}

function withoutEmpty(environment: Readonly<Record<string, string | undefined>>) {
  return Object.fromEntries(Object.entries(environment).filter(([, value]) => value !== undefined && value !== ''))
}

function withSecretFiles(environment: Record<string, string | undefined>): Record<string, string | undefined> {
  const result = { ...environment }
  for (const key of secrets) {
    const path = environment[`${key}_FILE`]
    if (!path) continue
    try {
      result[key] = readFileSync(path, 'utf8').trim()
    } catch {
      throw new ConfigError(`The configuration cannot be used:\n  ${key}_FILE: the file cannot be read`)
    }
  }
  return result
}
