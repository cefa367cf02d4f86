// The project's model beside the electrochemical one: errors and how often bands hold, by set, as a table.

import { figuresOf, type Told, toldOf } from '../outside/charges/figures.ts'
import { type Knows, type Row, timesOf } from './rows.ts'

export interface Compared {
  readonly total: readonly Told[]
  readonly cutoff: readonly Told[]
}

/** Up to this rate the two speak of the same: above it an energy cell of a parameter set is charged as no pilot would. */
export const usualRate_C = 1

export function compared(rows: readonly Row[], knows: Knows, all: readonly Row[] = rows): Compared {
  const told = rows.flatMap(row => {
    const times = timesOf(row, knows, all)
    if (!times) return []
    const id = `${row.rate_C}C from ${row.start}`
    const { charge, time_s, bands } = times
    return [
      {
        total: toldOf(row.set, id, row.end_s, charge.duration_s, time_s),
        cutoff: toldOf(row.set, id, row.cutoff_s, charge.timeToCutoff_s, bands().timeToCutoff_s),
      },
    ]
  })
  return { total: told.map(({ total }) => total), cutoff: told.map(({ cutoff }) => cutoff) }
}

const percent = (share: number) => `${(100 * share).toFixed(1)} %`
const known: readonly (readonly [Knows, string])[] = [
  ['inputs', 'capacity and a reading known'],
  ['resting volts', 'capacity and resting volts'],
  ['its log', 'its own log at 0.5C'],
]

/** In Markdown. */
export function tableOf(rows: readonly Row[]): string {
  const groups = [
    ...Map.groupBy(rows.filter(isUsual), ({ set, model }) => `${set}, ${model}`),
    [`all up to ${usualRate_C}C`, rows.filter(isUsual)] as const,
    [`all above ${usualRate_C}C`, rows.filter(row => !isUsual(row))] as const,
  ]
  const lines = known.flatMap(([knows, what]) =>
    groups.flatMap(([name, those]) => {
      const { total, cutoff } = compared(those, knows, rows)
      if (total.length === 0) return []
      const [whole, first] = [figuresOf(total), figuresOf(cutoff)]
      const cells = [whole.median, whole.most, whole.inside, first.median, first.inside].map(percent)
      return [`| ${[what, name, total.length, ...cells].join(' | ')} |`]
    }),
  )
  return [
    '| known | parameter set, model | charges | total: median error | 95 of 100 | in the band | to the cutoff: median error | in the band |',
    '|---|---|---|---|---|---|---|---|',
    ...lines,
  ].join('\n')
}

export const isUsual = ({ rate_C }: Row): boolean => rate_C <= usualRate_C
