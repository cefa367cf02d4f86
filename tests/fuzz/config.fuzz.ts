// Whatever the environment holds: it is taken whole, or refused in words that name the variable and print no secret.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { ConfigError, readConfig, redacted, variableNames } from '../../src/program/config.ts'
import { tryDoor } from './door.ts'
import { someValue } from './grammar.ts'

const secret = 'zq9-secret-of-nobody'
const value = fc.oneof(
  fc.constantFrom('', ' ', '0', '65536', 'http', 'gateway', 'auto', 'true', 'https://club.test', 'postgres://a:b@c/d'),
  fc.constantFrom('@chargehand:club.test', 'anyone', 'f'.repeat(64), '700000000000000001', '/nowhere/at/all', '/etc'),
  someValue,
)
const name = fc.constantFrom(...variableNames, ...variableNames.map(one => `${one}_FILE`))
const environment = fc.dictionary(
  name,
  fc.tuple(value, fc.boolean()).map(([text, is]) => (is ? `${text}${secret}` : text)),
)

it('config', async () => {
  await tryDoor('config', environment, async variables => {
    try {
      const hidden = JSON.stringify(redacted(readConfig(variables)))
      for (const key of ['DISCORD_TOKEN', 'MATRIX_PASSWORD', 'MATRIX_ACCESS_TOKEN', 'MATRIX_STORE_KEY', 'DATABASE_URL'])
        if (variables[key]) expect(JSON.parse(hidden)[key]).toBe('(hidden)')
    } catch (error) {
      expect(error).toBeInstanceOf(ConfigError)
      expect((error as Error).message).not.toContain(secret)
      expect(variableNames.some(one => (error as Error).message.includes(one))).toBe(true)
    }
  })
})
