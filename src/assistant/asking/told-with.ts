// What a question's words told of dangers, and what was only assumed, goes with the question wherever it is asked again.

import type { Question } from '../../language/sentence/question.ts'
import { commandAtStart, takesWhole } from '../../language/sentence/typed.ts'
import type { Registry } from '../registry.ts'

type Told = NonNullable<Question['told']>

/** Nothing where the command changes what is kept, or takes in words whole. */
export function toldWith(name: string, told: Told, { find, vocabulary }: Registry): Told {
  const command = vocabulary.find(one => one.name === name)
  return !command || find(name)?.changes || takesWhole(command) ? [] : [...new Set(told)]
}

/** The same for a question in notation that is offered next. */
export function withTold(question: string, told: Told, registry: Registry): string {
  const command = commandAtStart(question, registry.vocabulary)
  const goes = command ? toldWith(command.name, told, registry) : []
  return goes.length > 0 ? `${question} told: ${goes.join(', ')}` : question
}
