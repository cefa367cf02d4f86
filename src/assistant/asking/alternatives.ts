// Where the type of the cells was assumed: what the answer would be for each other type.

import { chemistries, liFe, liIon } from '../../charging/things/chemistries.ts'
import { present } from '../../ground/present.ts'
import type { Text } from '../../ground/text.ts'
import type { Question } from '../../language/sentence/question.ts'
import { alternative, nothingPrinted } from '../asking-back/ask-back.words.ts'
import type { Entry } from '../command.ts'
import type { Context } from '../context.ts'
import type { Answer } from '../reply.ts'
import { understand } from './inputs.ts'

/** Figures that somebody sets or goes by: where they differ, the type matters. */
const telling: readonly string[] = ['setCurrent', 'cutoffPack', 'storagePack', 'storagePerCell', 'soc', 'restPerCell']

/** A line for each type whose figures differ; none where the answer is the same for all. */
export async function alternatives(
  command: Entry,
  question: Question,
  answer: Answer,
  context: Context,
): Promise<readonly Text[]> {
  const shown = figuresOf(answer)
  if (shown.length === 0) return []
  const others = await Promise.all(
    possible(question).map(async chemistry => {
      const options = withChemistry(question.options, chemistry.name)
      const other = options && (await command.answer(understand(command, options, context.locale).inputs, context))
      const figures = other ? figuresOf(other) : []
      const printed_V = options && chemistry.nominal_V.value * seriesIn(options)
      return printed_V === undefined || figures.length === 0 ? undefined : { chemistry, printed_V, figures }
    }),
  )
  const told = present(others)
  // What is the same for every type tells nothing.
  const differs = shown.map((text, at) => told.some(({ figures }) => figures[at] !== text))
  const lines = told
    .filter(({ figures }) => figures.join() !== shown.join())
    .map(({ chemistry, printed_V, figures }) => {
      const telling = figures.filter((_, at) => differs[at] ?? true)
      return alternative(chemistry, printed_V, telling, context.locale)
    })
  return lines.length > 0 ? [...lines, nothingPrinted(context.locale)] : []
}

/** Li-ion is assumed of round cells alone, and they are none in pouches. */
const possible = ({ options }: Question) =>
  `${options.pack} ${options.chemistry}`.includes(liIon.name) ? [liIon, liFe] : chemistries

/** One where the count was not told. */
const seriesIn = (options: Readonly<Record<string, string>>): number =>
  Number(/(\d+)S(?:\d+P)?\b/.exec(options.pack ?? options.chemistry ?? '')?.[1] ?? 1)

/** Of one cell the volts of the pack are those of the cell. */
const figuresOf = ({ figures = [] }: Answer): readonly string[] => {
  const told = figures.filter(({ key }) => telling.includes(key))
  return told
    .filter(({ value, unit }, at) => told.findIndex(one => one.value === value && one.unit === unit) === at)
    .map(({ text }) => text)
}

/** The same question of cells of another type; undefined where it names no cells. */
function withChemistry(options: Question['options'], name: string): Readonly<Record<string, string>> | undefined {
  const option = ['pack', 'chemistry'].find(of => options[of] !== undefined)
  if (option === undefined) return undefined
  const names = chemistries.map(chemistry => chemistry.name)
  const text = options[option] ?? ''
  const words = text.split(' ').map(word => (names.includes(word) ? name : word))
  return { ...options, [option]: words.join(' ') }
}
