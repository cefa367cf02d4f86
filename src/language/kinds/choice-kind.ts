// A kind of value that is one of a few words.

import { plainText, shortened } from '../../ground/plain-text.ts'
import { Problem } from '../../ground/problem.ts'
import type { ValueKind } from './value-kind.ts'

/** `name` says what is chosen, as in "I know no such decimal mark", unless `refusal` says it better. */
export function choiceKind<const T extends string>(
  name: string,
  choices: readonly [T, ...T[]],
  refusal = `I know no such ${name}.`,
): ValueKind<T> {
  return {
    name,
    example: choices[0],
    read: text => {
      const typed = plainText(text).toLowerCase()
      const value = choices.find(choice => choice.toLowerCase() === typed)
      if (value !== undefined) return { value, assumed: [] }
      throw new Problem({
        what: refusal,
        token: shortened(text),
        expected: `one of: ${choices.join(', ')}`,
        example: choices[0],
      })
    },
    write: value => value,
    complete: prefix =>
      choices.filter(choice => choice.toLowerCase().startsWith(prefix.trim().toLowerCase())),
  }
}
