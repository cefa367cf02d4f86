// Asks one thing back, or offers questions that are near to what was not understood.

import type { Locale, Said } from '../../ground/locale.ts'
import { present } from '../../ground/present.ts'
import { attempt, Problem } from '../../ground/problem.ts'
import type { HandbookEntry } from '../../handbook/entry.ts'
import { bestCover, candidatesOf } from '../../language/candidates/index.ts'
import { readCapacity } from '../../language/quantities/quantities.ts'
import type { Missing } from '../../language/reading/fit.ts'
import type { Meant, MeantInPart } from '../../language/reading/meant.ts'
import { wholePack } from '../../language/reading/told/told-pack.ts'
import { type Question, writeQuestion } from '../../language/sentence/question.ts'
import type { Entry } from '../command.ts'
import type { Registry } from '../registry.ts'
import * as texts from './ask-back.words.ts'

const mostChoices = 4
const mostSamples = 3

/** What is offered for a missing detail, in notation. */
export function choicesFor({ missing }: MeantInPart, { takes }: Entry): readonly string[] {
  if (missing === 'capacity') return ['450mAh', '1300mAh', '2200mAh', '5000mAh']
  if ('cells' in missing) return (missing.cells.length > 0 ? missing.cells : [2, 3, 4, 6]).map(cells => `${cells}S`)
  const offered = takes[missing.option]?.kind.complete('') ?? []
  // Of each sort one.
  const sorts = Map.groupBy(offered, choice => choice.split(' ')[0])
  return [...sorts.values()].flatMap(([first]) => first ?? []).slice(0, mostChoices)
}

export function askedBack(meant: MeantInPart, command: Entry, choices: readonly string[], locale: Locale): Problem {
  const { missing, question, told } = meant
  const cells = present([told?.series === undefined ? undefined : `${told.series}S`, told?.chemistry]).join(' ')
  const isWhole = question.options.pack !== undefined || cells === ''
  const { pack: whole, ...others } = question.options
  const soFar = [...new Set(present([isWhole ? whole : cells, ...Object.values(others)]))].join(', ')
  const options = (choice: string): Readonly<Record<string, string>> | undefined => {
    // What overwrites or removes something is asked about once more, so its details are told in words.
    if (command.confirm) return undefined
    if (missing !== 'capacity')
      return 'cells' in missing ? undefined : { [missing.option]: choice, ...question.options }
    const capacity_Ah = attempt(() => readCapacity(choice))
    // What was only assumed of the pack must stay so: then the choice alone answers what is asked.
    const pack = told?.series !== undefined && told.chemistry && wholePack({ ...told, capacity_Ah }).text
    return pack ? { ...question.options, pack } : undefined
  }
  const example = missing === 'capacity' ? '1300mAh' : (choices[0] ?? command.examples[0] ?? command.name)
  return new Problem({
    what: missingWords(missing, command, { cells, soFar }, locale),
    expected: texts.choicesWords(choices),
    example,
    choices: choices.map(label => {
      const whole = options(label)
      return {
        label,
        question: whole ? writeQuestion({ command: command.name, options: whole, told: question.told }) : label,
      }
    }),
  })
}

/** Of the pack, and in all. */
interface Known {
  readonly cells: string
  readonly soFar: string
}

function missingWords(missing: Missing, { words }: Entry, { cells, soFar }: Known, locale: Locale): Said {
  if (missing === 'capacity') return texts.capacityMissing(cells)
  if ('cells' in missing) return texts.cellsMissing(soFar)
  return texts.detailMissing(words(locale).takes[missing.option]?.about ?? locale.own(missing.option), soFar)
}

/** Sample questions near to what may have been meant, never the grammar. */
export function unclear(
  { kind, near }: Extract<Meant, { near: unknown }>,
  { commands, find }: Registry,
  locale: Locale,
): Problem {
  const likely = kind === 'notours' ? [] : near
  const told = likely.flatMap(({ question }) => (question && hasDetails(question) ? [question] : []))
  const asOf = new Set(told.map(({ command }) => command))
  const samples = [...new Set([...likely.flatMap(({ intent }) => find(intent) ?? []), ...commands])]
    .filter(({ name, changes, takes }) => !asOf.has(name) && !changes && Object.keys(takes).length > 0)
    .flatMap(({ words }) => words(locale).asks?.slice(0, 1) ?? [])
  // What was told fits some of them: those first, with it filled in.
  const choices = [
    ...told
      .filter(({ command }) => !find(command)?.changes)
      .map(question => ({
        label: labelOf(question, find(question.command), locale),
        question: writeQuestion(question),
      })),
    ...samples.map(question => ({ label: question, question })),
  ].slice(0, mostSamples)
  return texts.withSamples(kind === 'notours' ? texts.notOurs : texts.notClear, choices)
}

const hasDetails = ({ options }: Question): boolean => Object.keys(options).length > 0

/** As people ask it, where the pack is all that was told; else in notation. */
function labelOf({ command, options }: Question, entry: Entry | undefined, locale: Locale): string {
  const { pack, ...others } = options
  const [ask = ''] = entry?.words(locale).asks ?? []
  const [value, ...more] = bestCover(candidatesOf(ask))
  return pack !== undefined && value?.kind === 'pack' && more.length + Object.keys(others).length === 0
    ? ask.slice(0, value.start) + pack + ask.slice(value.end)
    : `${command}: ${Object.values(options).join(', ')}`
}

/** The entries that lie nearest to what the handbook has nothing on, and other questions where they are few. */
export function notInHandbook(nearest: readonly HandbookEntry[], { details }: Problem): Problem {
  const entries = nearest.map(({ title }) => ({ label: title, question: `handbook about: ${title}` }))
  return texts.withSamples(texts.nothingOnThat, [...entries, ...(details.choices ?? [])].slice(0, mostSamples))
}
