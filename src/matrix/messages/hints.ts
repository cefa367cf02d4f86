// In a room a question needs its prefix: so does each that an answer shows for people to type.

import type { Registry } from '../../assistant/registry.ts'
import type { Reply } from '../../assistant/reply.ts'
import { english } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import type { Block, Span } from './blocks.ts'

export interface Hint {
  /** What can be tried instead of what was not understood. */
  reply(reply: Reply): Reply
  /** Commands in the midst of a text. */
  blocks(blocks: readonly Block[]): readonly Block[]
}

export function createHint(prefix: string, { commands, vocabulary }: Pick<Registry, 'commands' | 'vocabulary'>): Hint {
  const names = vocabulary.map(({ name }) => name).toSorted((a, b) => b.length - a.length)
  /** The others are words of every day as well. */
  const [plain = [], telling = []] = [false, true].map(is =>
    names.filter(one => (one.includes(' ') || one === 'help') === is),
  )
  const options = new Set(vocabulary.flatMap(({ options }) => options.map(({ name }) => name)))
  const end = '["”)]|$'
  /** A number is kept with its unit by a space of its own. */
  const either = (words: Iterable<string>): string =>
    [...words].map(word => word.split(/\s/).map(RegExp.escape).join('\\s')).join('|')
  const asked = new Set(commands.flatMap(({ words }) => words(english('.')).asks ?? []))
  /** In quotes or brackets, or after a colon or a dot: alone, or with its details. */
  const shown = new RegExp(
    `(?<=["“(]|[:·] )(?:(?:${either(telling)})(?=${end}| )|(?:${either(plain)})(?=${end}| (?:${either(options)}): )|(?:${either(asked)})(?=${end}| ·))`,
    'gu',
  )

  const text = (words: string): string => words.replace(shown, `${prefix} $&`)
  const span = (one: Span): Span =>
    typeof one === 'string' ? text(one) : 'strong' in one ? { strong: text(one.strong) } : one
  const prefixed = (question: string): string => `${prefix} ${question}`

  return {
    reply(reply) {
      const { problem, followUps } = reply
      if (!problem) return reply
      const [only, ...others] = followUps
      const isTried = only && others.length === 0 && String(only.label) === only.question
      const tried = isTried ? [{ ...only, label: prefixed(only.question) as Text }] : followUps
      return { ...reply, problem: { ...problem, example: prefixed(problem.example) }, followUps: tried }
    },
    blocks: blocks =>
      blocks.map(block =>
        'lines' in block
          ? { lines: block.lines.map(line => line.map(span)) }
          : { ...block, items: block.items.map(item => item.map(span)) },
      ),
  }
}
