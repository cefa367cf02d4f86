// Which command a plain sentence means.

import { spaced } from '../../ground/plain-text.ts'
import { commandFitting } from './command-fitting.ts'
import type { CommandWords, Vocabulary } from './vocabulary.ts'

/** Before or behind a question it says nothing; alone it is answered. */
const greeting =
  /^(?:hi|hey|hello|good (?:morning|evening)|thanks|thank you|cheers)(?: (?:all|there|again|guys))?[ ,.!]+(?=\S)|(?<=\S)[ ,.!?]+(?:thanks|thank you|cheers)(?: (?:all|in advance|guys))?[ .!]*$/gi

/** The command whose phrase is found in the text: the longest phrase wins, then the earlier. Else the one that its values fit, or the one named. */
export function commandMeant(text: string, vocabulary: Vocabulary): CommandWords | undefined {
  const said = spaced(text.replace(greeting, ''))
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
  if (found[0]) return found[0].command
  const fit = commandFitting(text, vocabulary)
  // One value alone says less than the name of a command does.
  return fit && fit.size > 1 ? fit.command : (onlyNamed(said, vocabulary) ?? fit?.command)
}

/** Words that hold the name of a command and mean something else. */
const otherLeads = / (?:balance lead|lead acid|(?:same|flight|first|last|next|this|every) time) /g

/** "The best current for …": a command whose name is said, if it is the only one. */
function onlyNamed(said: string, vocabulary: Vocabulary): CommandWords | undefined {
  const clear = said.replace(otherLeads, ' ')
  const named = vocabulary.filter(({ name }) => clear.includes(` ${name} `))
  return named.length === 1 ? named[0] : undefined
}
