// The marks of the corpus hang together: whatever is learned from them is worth what they are.

import { describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { commandIntents, intents, typedCommands } from '../../../src/language/corpus/intents.ts'
import { authors, furtherMessages, messagesOf } from '../../../training/corpus/read-corpus.ts'

const people = authors.map(author => ({ author, messages: messagesOf(author) }))
const everything = people.flatMap(({ messages }) => messages)

describe('the corpus', () => {
  it('knows every command by name', () => {
    const known = new Set<string>([...intents, ...typedCommands])
    expect(commands.map(({ name }) => name).filter(name => !known.has(name))).toEqual([])
  })

  it('asks for every command', () => {
    const asked = new Set<string>([...everything, ...furtherMessages()].map(({ intent }) => intent))
    expect(commandIntents.filter(name => !asked.has(name))).toEqual([])
  })

  it.each(people)('of person $author is whole', ({ messages }) => {
    const texts = new Set(messages.map(({ text }) => text))
    expect(texts.size).toBe(messages.length)
    for (const message of messages) {
      for (const value of message.values) expect(message.text).toContain(value.text)
      if (message.after !== undefined) expect(texts).toContain(message.after)
      if (message.intent === 'amend') expect(message.after, message.text).toBeDefined()
      expect(message.also, message.text).not.toBe(message.intent)
    }
  })

  it.each(people)('of person $author pairs each danger with a harmless twin', ({ messages }) => {
    const pairs = Map.groupBy(
      messages.filter(message => message.part === 'B'),
      ({ pair }) => pair,
    )
    for (const [pair, twins] of pairs) {
      expect(
        twins.map(({ dangers }) => dangers.length > 0),
        `pair ${pair}`,
      ).toEqual([true, false])
    }
  })

  it('asks of each kind of danger', () => {
    const told = new Map<string, number>()
    for (const { dangers } of everything) for (const danger of dangers) told.set(danger, (told.get(danger) ?? 0) + 1)
    expect([...told].filter(([, count]) => count < 3)).toEqual([])
  })
})
