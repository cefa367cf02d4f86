// What of an error the log may hold: no tokens, and nothing that a member wrote.

import { expect, it } from 'vitest'
import { describeError } from '../../src/program/log.ts'

const said = (error: unknown) => JSON.stringify(describeError(error))
const thrownBy = (work: () => unknown): unknown => {
  try {
    return work()
  } catch (error) {
    return error
  }
}

const unclosed = '(grandmothers\nheirloom'

it.each([
  ['a parser', () => JSON.parse('grandmothers heirloom')],
  ['a pattern', () => new RegExp(unclosed)],
])('holds no words of a member that %s quotes', (_, work) => {
  const shown = said(thrownBy(work))
  expect(shown).not.toMatch(/grandmother|heirloom/)
})

it('holds no value that PostgreSQL quotes, but the table that it names', () => {
  const error = new Error('invalid input syntax for type integer: "grandmothers heirloom" in relation "kit"')
  expect(said(error)).not.toContain('heirloom')
  expect(describeError(error).message).toBe('invalid input syntax for type integer: "(hidden)" in relation "kit"')
})

it.each([
  'POST https://discord.com/api/v10/interactions/123/aW50ZXJhY3Rpb24/callback failed',
  'GET https://discord.com/api/v10/webhooks/123/aW50ZXJhY3Rpb24?wait=true failed',
  'GET https://matrix.example.org/sync?access_token=aW50ZXJhY3Rpb24&since=4 failed',
])('holds no token of a URL: %s', message => {
  expect(said(new Error(message))).not.toContain('aW50ZXJhY3Rpb24')
})
