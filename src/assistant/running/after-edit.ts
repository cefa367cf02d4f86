// What becomes of an answer whose question was edited or taken away, on every surface alike.

import { commandAtStart } from '../../language/sentence/typed.ts'
import { heaviness } from '../handed-on.ts'
import type { Registry } from '../registry.ts'
import type { Reply } from '../reply.ts'
import { takesBack } from '../taking-back.ts'

/** What a question has changed when it was answered. */
export interface Done {
  /** The command. */
  readonly deed: string
  /** What takes it back, as it is to be typed; undefined where nothing does. */
  readonly way: string | undefined
}

const commandOf = (question: string, { vocabulary, get }: Registry) => {
  const command = commandAtStart(question, vocabulary)
  return command && get(command.name)
}

/** Not what could not be read, nor what would change again what is kept. */
export function mayAskAgain(question: string, registry: Registry): boolean {
  const command = commandOf(question, registry)
  return command !== undefined && command.changes === undefined
}

/** Undefined where the question, in notation, changes nothing. */
export function doneBy(question: string, registry: Registry): Done | undefined {
  const command = commandOf(question, registry)
  return command?.changes ? { deed: command.name, way: takesBack(command.name) } : undefined
}

/** `earlier` is what was asked before the edit. Nobody is told of an edit, so a worse answer is to be given anew. */
export async function answerToEdit(
  earlier: string,
  registry: Registry,
  ask: { before(question: string): Promise<Reply>; now(): Promise<Reply> },
): Promise<{ readonly reply: Reply; readonly isWorse: boolean }> {
  const before = mayAskAgain(earlier, registry) ? (await ask.before(earlier)).verdict : undefined
  const reply = await ask.now()
  return { reply, isWorse: heaviness(reply.verdict ?? 'go') > heaviness(before ?? 'go') }
}
