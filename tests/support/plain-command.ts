// Commands and replies in plain words, for tests of what is around them.

import type { Asked, Entry, Takes } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { type Answer, completeReply, type Reply } from '../../src/assistant/reply.ts'
import { english } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'

/** The same with strings where a locale's text is wanted. */
export type Plain<T> = T extends Text
  ? string
  : T extends readonly (infer U)[]
    ? readonly Plain<U>[]
    : T extends object
      ? { readonly [K in keyof T]: Plain<T[K]> }
      : T

interface PlainCommand<T extends Takes> extends Pick<Entry, 'name' | 'examples' | 'changes'> {
  readonly summary: string
  readonly takes: T
  readonly about: { readonly [K in keyof T]: string }
  /** Before and behind the value in the read-as line; "$" stands for it. */
  readonly as?: { readonly [K in keyof T]?: string }
  answer(asked: Asked<T>, context: Context): Plain<Answer> | Promise<Plain<Answer>>
}

export function plainCommand<const T extends Takes>({
  summary,
  about,
  as = {},
  answer,
  ...command
}: PlainCommand<T>): Entry {
  const phrases: { readonly [option: string]: string | undefined } = as
  return {
    ...command,
    words: ({ own }) => ({
      summary: own(summary),
      takes: Object.fromEntries(
        Object.entries<string>(about).map(([option, words]) => {
          const phrase = phrases[option]
          return [
            option,
            {
              about: own(words),
              as: phrase === undefined ? undefined : (value: Text) => own(phrase.replace('$', value)),
            },
          ]
        }),
      ),
    }),
    answer: async (asked, context) => (await answer(asked as Asked<T>, context)) as Answer,
  }
}

export const plainReply = (
  frame: Plain<Parameters<typeof completeReply>[0]>,
  answer: Plain<Answer>,
  mark: '.' | ',' = '.',
): Reply => completeReply(frame as Parameters<typeof completeReply>[0], answer as Answer, english(mark))
