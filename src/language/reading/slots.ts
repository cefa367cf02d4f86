// Which detail of a command a value of the sentence is: by the word before it, by name, by kind.

import type { Candidate, ValueName } from '../candidates/sentence/candidate.ts'
import type { CommandWords, OptionWords } from '../sentence/vocabulary.ts'

/** The kinds of option that read a kind of value, the likeliest first. */
const readers: Readonly<Partial<Record<ValueName, readonly string[]>>> = {
  charger: ['charger', 'session chargers'],
  source: ['source', 'session sources'],
  current: ['current'],
  rate: ['rate', 'current'],
  voltage: ['voltage'],
  power: ['power'],
  energy: ['energy'],
  capacity: ['capacity'],
  duration: ['duration'],
  temperature: ['temperature'],
  resistance: ['resistance', 'cell resistances'],
  resistances: ['cell resistances'],
  length: ['length'],
  gauge: ['gauge'],
  count: ['count'],
  cellVolts: ['cell volts'],
  percent: ['percent', 'from'],
  state: ['from'],
}

const goalCues: ReadonlySet<string> = new Set(['to', 'until', 'till', 'into', 'up', 'til', 'reach', 'for'])
const endCues: ReadonlySet<string> = new Set(['until', 'till', 'til'])

/** The detail that a value fills; undefined where the command takes none of its kind, or it is filled already. */
export function slotFor(
  candidate: Candidate,
  { options }: CommandWords,
  isFilled: (option: string) => boolean,
): OptionWords | undefined {
  const { kind, cue = '' } = candidate
  const free = (option: OptionWords | undefined) => (option && !isFilled(option.name) ? option : undefined)
  const named = (name: string) => free(options.find(option => option.name === name))
  if (kind === 'state') return stateSlot(candidate, named, kindOf => free(options.find(o => o.kind === kindOf)))
  if (kind === 'current' && endCues.has(cue)) return named('until')
  const kinds = readers[kind] ?? []
  return (
    named(kind) ??
    kinds
      .map(wanted => free(options.find(({ kind: of, name }) => of === wanted && name !== 'until' && !isFilled(name))))
      .find(option => option !== undefined)
  )
}

/** A state behind "to" is where it goes; so are storage and full, unless they say where it stands. */
function stateSlot(
  { cue = '', text }: Candidate,
  named: (name: string) => OptionWords | undefined,
  ofKind: (kind: string) => OptionWords | undefined,
): OptionWords | undefined {
  const isNamedGoal = text === 'storage' || text === 'full'
  const stands = cue === 'from' || cue === 'at'
  const isGoal = text !== 'empty' && (goalCues.has(cue) || (isNamedGoal && !stands))
  const start = () => named('from') ?? ofKind('from') ?? named('at')
  return isGoal ? (named('to') ?? start()) : start()
}

/** Goals that are told as such come first: what stands beside them is where the pack stands. */
export const goalsFirst = (values: readonly Candidate[]): readonly Candidate[] =>
  values.toSorted((a, b) => Number(isToldGoal(b)) - Number(isToldGoal(a)))

export const isToldGoal = ({ kind, cue = '' }: Candidate): boolean => kind === 'state' && goalCues.has(cue)
