// Which command a plain sentence means.

import { commandFitting } from './command-fitting.ts'
import { spaced } from './text.ts'
import type { CommandWords, Vocabulary } from './vocabulary.ts'

/** The command whose phrase is found in the text: the longest phrase wins, then the earlier. Else the one that its values fit, or the one named. */
export function commandMeant(text: string, vocabulary: Vocabulary): CommandWords | undefined {
  const said = spaced(text)
  const found = vocabulary
    .flatMap(command =>
      command.plainWords.map(phrase => ({
        command,
        phrase,
        index: said.indexOf(` ${phrase.toLowerCase()} `),
      })),
    )
    .filter(({ index }) => index >= 0)
    .sort((a, b) => b.phrase.length - a.phrase.length || a.index - b.index)
  return found[0]?.command ?? commandFitting(text, vocabulary) ?? onlyNamed(said, vocabulary)
}

/** "The best current for …": a command whose name is said, if it is the only one. */
function onlyNamed(said: string, vocabulary: Vocabulary): CommandWords | undefined {
  const named = vocabulary.filter(({ name }) => said.includes(` ${name} `))
  return named.length === 1 ? named[0] : undefined
}
