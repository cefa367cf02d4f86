// Another quantity of what was asked, where the answer before names it already: "how long" behind a plan, "amps" behind a board.

import type { Candidate } from '../candidates/index.ts'
import type { Frame } from '../frames/frame.ts'
import { conceptsOf } from '../model/concepts.ts'
import { wordsOf } from '../model/words.ts'
import type { Choice } from '../reading/choose.ts'
import { fitTo } from '../reading/fit.ts'
import type { Vocabulary } from '../sentence/vocabulary.ts'
import { changed } from './amend.ts'
import { asBefore } from './as-before.ts'
import { choiceOf } from './choice-of.ts'
import { isFewWords, namesPack } from './follow-up.ts'

const units: Readonly<Record<string, string>> = {
  long: 's',
  time: 's',
  done: 's',
  when: 's',
  amps: 'A',
  watts: 'W',
  wh: 'Wh',
  volts: 'V',
  percent: '%',
}

/** Their answers tell how much goes into a pack, or out of it. */
const fills: ReadonlySet<string> = new Set(['current', 'time', 'storage', 'percent', 'parallel'])
const atWhatTime = /^\W*(?:(?:and|so|ok|but) )*(?:when|(?:at )?what time)\b/i
const whatGoesIn =
  /\bhow (?:much|many)\b.*\b(?:goes?|going|put|takes?|comes?|get) (?:\w+ )?(?:in|into|out|back)\b|\b(?:have|need|got) to (?:dis)?charge\b/i

/** Their answers tell of all that hangs together; one pack alone is asked about anew. */
const ofMany: ReadonlySet<string> = new Set(['plan', 'parallel', 'source', 'lend', 'storage', 'trim'])

/**
 * The question before, asked again, where few words ask for a quantity that its answer names and `other`, which they
 * are read as, would lose some of its details.
 */
export function stays(
  text: string,
  values: readonly Candidate[],
  other: Choice | undefined,
  frame: Frame,
  vocabulary: Vocabulary,
): Choice | undefined {
  const { question, figures = [], pending } = frame
  const command = vocabulary.find(({ name }) => name === question.command)
  const isOfIt =
    command &&
    ((fills.has(command.name) && whatGoesIn.test(text)) || (command.name === 'plan' && atWhatTime.test(text)))
  if (isOfIt && !pending && values.length === 0) return choiceOf(fitTo(command, [], question.options), question.options)
  if (
    !command ||
    !ofMany.has(question.command) ||
    !other?.fitted ||
    pending ||
    (values.length === 0 ? !isFewWords(text) : values.some(namesPack))
  )
    return undefined
  const asked = new Set(
    wordsOf(text).flatMap(word =>
      word === 'times' || word === 'a' ? [] : conceptsOf(word).map(concept => units[concept]),
    ),
  )
  // Of a discharge it is known once it is told where the pack stands.
  const isNamed = figures.some(({ unit }) => asked.has(unit)) || (question.command === 'storage' && asked.has('s'))
  const { options } = other.fitted
  const held = new Set(Object.values(options))
  // What is stored goes to a level that no detail tells.
  const isLost =
    other.intent !== question.command &&
    (question.command === 'storage' || Object.values(question.options).some(told => !held.has(told)))
  if (!isNamed || !isLost) return undefined
  if (values.length === 0) return choiceOf(fitTo(command, [], question.options), question.options)
  const change = changed(command, { values: asBefore(text, values, command, frame), free: {} }, frame)
  return change?.fitted.left.length === 0 ? choiceOf(change.fitted, change.kept) : undefined
}
