// What is only told, of a pack, its cells or what feeds one, is what the next question is about.

import { bestCover, candidatesOf } from '../candidates/index.ts'
import { namesForeign } from '../parts/foreign-chemistries.ts'
import { fitTo } from '../reading/fit.ts'
import { withCutoffType } from '../reading/told/by-cutoff.ts'
import type { Vocabulary } from '../sentence/vocabulary.ts'
import type { Frame } from './frame.ts'

/** That ask for little; the first of the vocabulary that takes all that was told stands for it. */
const commands: readonly string[] = ['current', 'supply', 'source', 'cells']

const besides: ReadonlySet<string> = new Set(['clock', 'length', 'duration', 'mass', 'price', 'number'])

/**
 * As the question that it would be by itself; of a pack that is told in part its capacity is open. Undefined where
 * nothing of the kind is told, and where a part tells less than what was spoken of `before`.
 */
export function toldFrame(
  text: string,
  names: readonly string[],
  vocabulary: Vocabulary,
  before: Frame | undefined,
): Frame | undefined {
  // When and how far something happened tells nothing of what it happened to.
  const values = withCutoffType(text, bestCover(candidatesOf(text))).filter(({ kind }) => !besides.has(kind))
  const sources = values.filter(({ kind }) => kind === 'source')
  // Cells of another kind are nothing that a setting is worked out for.
  if (namesForeign(text, sources)) return undefined
  const [frame] = vocabulary
    .filter(({ name }) => commands.includes(name))
    .flatMap((command): Frame[] => {
      const { left, options, missing, told, doubts } = fitTo(command, values)
      const isPart = missing === 'capacity' && told?.series !== undefined
      const isWhole = missing === undefined && (options.pack ?? options.source ?? options.volts) !== undefined
      if (left.length > 0 || !(isWhole || (isPart && !before))) return []
      const pending = isPart ? { missing, choices: [], told } : undefined
      return [{ question: { command: command.name, options }, pending, doubts, names }]
    })
  return frame
}
