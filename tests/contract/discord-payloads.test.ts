// The payload checks themselves: broken payloads must fail, and what every command registers must pass.

import { describe, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { allCommands } from '../../src/discord/commands/slash.ts'
import { english } from '../../src/ground/locale.ts'
import { bench, trayAdd, trayList } from '../support/discord-commands.ts'
import { callbackFaults, faultsOf, registrationFaults } from '../support/discord-payload.ts'

const command = { type: 1, name: 'bench', description: 'What to set', options: [] }
const text = (name: string, required = false) => ({ type: 3, name, description: 'words', required })
const button = { type: 2, style: 2, label: 'Why', custom_id: 'v1:why:AAAAAAAAAAAAAAAA' }
const row = { type: 1, components: [button] }
const message = { embeds: [{ description: 'an answer' }], allowed_mentions: { parse: [] } }

describe('registration', () => {
  it.each([
    ['upper case', { ...command, name: 'Bench' }],
    ['a space', { ...command, name: 'kit save' }],
    ['a long name', { ...command, name: 'b'.repeat(33) }],
    ['no description', { ...command, description: '' }],
    ['a long description', { ...command, description: 'd'.repeat(101) }],
    ['an unknown key', { ...command, summary: 'x' }],
    ['a required option after others', { ...command, options: [text('from'), text('pack', true)] }],
    ['duplicate options', { ...command, options: [text('pack'), text('pack')] }],
    ['too many options', { ...command, options: Array.from({ length: 26 }, (_, at) => text(`o${at}`)) }],
    ['subcommands beside options', { ...command, options: [{ ...command, type: 1 }, text('pack')] }],
  ])('with %s is refused', (_, broken) => expect(registrationFaults([broken])).not.toEqual([]))

  it('of the same name twice is refused', () =>
    expect(registrationFaults([command, command])).toEqual(['two commands are named bench']))

  it.each([
    ['the real commands', commands],
    ['families of commands', [bench, trayAdd, trayList]],
  ])('of %s is taken', (_, all) => expect(registrationFaults(allCommands(all, english('.')))).toEqual([]))
})

describe('a callback', () => {
  it.each([
    ['no known type', { type: 99 }],
    ['a long description', { type: 4, data: { embeds: [{ description: 'd'.repeat(4097) }] } }],
    ['a long field', { type: 4, data: { embeds: [{ fields: [{ name: 'n', value: 'v'.repeat(1025) }] }] } }],
    ['an empty field', { type: 4, data: { embeds: [{ fields: [{ name: 'n', value: '' }] }] } }],
    [
      'too much over all embeds',
      { type: 4, data: { embeds: [{ description: 'd'.repeat(4000) }, { description: 'd'.repeat(2001) }] } },
    ],
    ['too many embeds', { type: 4, data: { embeds: Array(11).fill({ description: 'd' }) } }],
    ['six rows', { type: 4, data: { ...message, components: Array(6).fill(row) } }],
    ['an empty row', { type: 4, data: { ...message, components: [{ type: 1, components: [] }] } }],
    [
      'the same button twice',
      { type: 7, data: { ...message, components: [{ type: 1, components: [button, button] }] } },
    ],
    [
      'a long custom id',
      { type: 4, data: { components: [{ type: 1, components: [{ ...button, custom_id: 'x'.repeat(101) }] }] } },
    ],
    ['an unknown key', { type: 4, data: { ...message, colour: 1 } }],
    ['a picture that is not attached', { type: 4, data: { embeds: [{ image: { url: 'attachment://chart.png' } }] } }],
    ['too many choices', { type: 8, data: { choices: Array(26).fill({ name: 'n', value: 'v' }) } }],
    ['a long choice', { type: 8, data: { choices: [{ name: 'n'.repeat(101), value: 'v' }] } }],
  ])('with %s is refused', (_, broken) => expect(callbackFaults(broken)).not.toEqual([]))

  it.each([
    ['a pong', { type: 1 }],
    ['a message', { type: 4, data: { ...message, flags: 64, components: [row] } }],
    ['a promise', { type: 5, data: { flags: 64 } }],
    ['a promised change', { type: 6 }],
    ['a change', { type: 7, data: message }],
    ['choices', { type: 8, data: { choices: [{ name: 'n', value: 'v' }] } }],
  ])('with %s is taken', (_, good) => expect(callbackFaults(good)).toEqual([]))
})

describe('a message', () => {
  it('with a reference to no id is refused', () =>
    expect(faultsOf('message', { ...message, message_reference: { message_id: 'x' } })).not.toEqual([]))

  it('with a long content is refused', () => expect(faultsOf('edit', { content: 'c'.repeat(2001) })).not.toEqual([]))
})
