// Commands as slash commands, and what comes back from them.

import { describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { optional, required } from '../../../src/assistant/command.ts'
import { commandAt } from '../../../src/assistant/naming/shelf.ts'
import { differences } from '../../../src/discord/commands/registration.ts'
import { slashCommands } from '../../../src/discord/commands/slash.ts'
import { readSlash } from '../../../src/discord/commands/slash-input.ts'
import { english } from '../../../src/ground/locale.ts'
import { bench, textKind, trayAdd, trayList } from '../../support/discord-commands.ts'
import { plainCommand } from '../../support/plain-command.ts'

describe('slashCommands', () => {
  it('makes families of two-word names, for servers, users and direct messages', () => {
    const [first, second] = slashCommands([bench, trayAdd, trayList], english('.'))
    expect(first).toMatchObject({ name: 'bench', integration_types: [0, 1], contexts: [0, 1, 2] })
    expect(second?.description).toBe('add, list')
    expect(second?.options?.map(({ type, name }) => [type, name])).toEqual([
      [1, 'add'],
      [1, 'list'],
    ])
  })

  it('asks for every quantity as text, what is needed first, and for privacy last', () => {
    const late = plainCommand({
      name: 'late',
      summary: 's',
      takes: { from: optional(textKind), pack: required(textKind) },
      about: { from: 'd', pack: 'x'.repeat(120) },
      examples: [],
      answer: () => ({ headline: '', cautions: [{ key: 'k', text: 't' }] }),
    })
    const [command] = slashCommands([late], english('.'))
    expect(command?.options?.map(({ type, name, required }) => [type, name, required])).toEqual([
      [3, 'pack', true],
      [3, 'from', false],
      [5, 'private', false],
    ])
    expect(command?.options?.[0]?.description).toHaveLength(100)
  })

  it('throws where Discord would refuse', () => {
    const tray = { ...bench, name: 'tray' }
    expect(() => slashCommands([tray, trayAdd], english('.'))).toThrow('both a command and a family')
    const secret = { ...bench, takes: { private: optional(textKind) } }
    expect(() => slashCommands([secret], english('.'))).toThrow('"private"')
  })
})

describe('the menu', () => {
  const menu = slashCommands(commands, english('.'))
  const found = menu.flatMap(({ name, options = [] }) => {
    const subs: (string | undefined)[] = options.filter(({ type }) => type === 1).map(sub => sub.name)
    return (subs.length > 0 ? subs : [undefined]).map(sub => commandAt(name, sub, commands))
  })

  it('has 12 names at the top at most, under which every command is found again', () => {
    expect(menu.length).toBeLessThanOrEqual(12)
    expect(found.toSorted()).toEqual(['ask', ...commands.map(({ name }) => name)].toSorted())
  })

  it("is there for people who have us with them, but for what is a club's", () => {
    const ofClubs = menu.filter(({ integration_types = [] }) => !integration_types.includes(1))
    expect(ofClubs.map(({ name }) => name)).toEqual(['club', 'answer'])
  })

  it('still knows commands by the names under which they stood', () =>
    expect([commandAt('current', undefined, commands), commandAt('house', 'set', commands)]).toEqual([
      'current',
      'house set',
    ]))
})

describe('readSlash', () => {
  it('reads plain words', () => {
    const options = [{ type: 3, name: 'question', value: 'how long for my wren?' }]
    expect(readSlash({ name: 'ask', options }, commands).question).toBe('how long for my wren?')
  })

  it('reads a command', () => {
    const options = [
      { type: 3, name: 'pack', value: '3S 0,72Ah LiHV' },
      { type: 5, name: 'private', value: true },
    ]
    expect(readSlash({ name: 'bench', options }, commands)).toEqual({
      question: { command: 'bench', options: { pack: '3S 0,72Ah LiHV' } },
      privately: true,
    })
  })

  it('reads a subcommand and what is being typed', () => {
    const typed = { type: 3, name: 'pack', value: '3', focused: true }
    expect(readSlash({ name: 'tray', options: [{ type: 1, name: 'add', options: [typed] }] }, commands)).toEqual({
      question: { command: 'tray add', options: { pack: '3' } },
      privately: undefined,
      focused: { option: 'pack', text: '3' },
    })
  })

  it('reads a subcommand without options', () =>
    expect(readSlash({ name: 'tray', options: [{ type: 1, name: 'list' }] }, commands).question).toEqual({
      command: 'tray list',
      options: {},
    }))
})

describe('differences', () => {
  const wanted = slashCommands([bench, trayAdd], english('.'))
  /** As Discord gives them back: with ids, and without what is false or empty. */
  const there = wanted.map(command => ({
    ...JSON.parse(JSON.stringify(command), (key, value) => (key === 'required' && value === false ? undefined : value)),
    id: '1',
    version: '2',
    nsfw: false,
  }))

  it('are none between what was sent and what Discord made of it', () => expect(differences(wanted, there)).toEqual([]))

  it('are what lacks, what is other, and what is too many', () => {
    const [first, second, ask] = there
    expect(differences(wanted, [first, ask])).toEqual(['tray'])
    expect(differences(wanted, [first, { ...second, description: 'old' }, ask])).toEqual(['tray'])
    expect(differences(wanted, [...there, { name: 'gone' }])).toEqual(['gone'])
  })
})
