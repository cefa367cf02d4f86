// A kind of value that is one of a few words.

import type { Said } from '../../ground/locale.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { oneOf } from '../../ground/plain-text.words.ts'
import { noSuchChoice } from './kinds.words.ts'
import { startingWith, type ValueKind } from './value-kind.ts'

/** `name` says what is chosen; `refusal` what is wrong with another word, where it can say more than that. */
export function choiceKind<const T extends string>(
  name: string,
  choices: readonly [T, ...T[]],
  refusal: Said = noSuchChoice,
): ValueKind<T> {
  return {
    name,
    example: choices[0],
    read: text => {
      const typed = plainText(text).toLowerCase()
      const value = choices.find(choice => choice.toLowerCase() === typed)
      if (value !== undefined) return { value, assumed: [] }
      throw problemAt(text, refusal, { expected: oneOf(choices), example: choices[0] })
    },
    write: value => value,
    complete: startingWith(choices),
  }
}
