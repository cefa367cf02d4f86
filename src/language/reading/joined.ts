// What the values of a sentence say of which command is meant, whatever its words sound like: how packs hang together, what
// they give in flight, and whether they are drained.

import { lipo } from '../../charging/things/chemistries.ts'
import { socOf, startOf } from '../../charging/things/level.ts'
import { attempt } from '../../ground/problem.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Ranked } from '../model/index.ts'
import type { CommandWords, Vocabulary } from '../sentence/vocabulary.ts'
import { readAnyState } from '../things/state.ts'
import { outlets } from './charger-told.ts'
import { isToldGoal } from './slots.ts'

const takes = ({ options }: CommandWords, ...names: readonly string[]): boolean =>
  names.every(name => options.some(option => option.name === name))

/** What one charge of one pack asks about. */
const isOfOne = (command: CommandWords): boolean =>
  takes(command, 'pack', 'charger', 'current') && !takes(command, 'count')

/** The detail that only the command for such packs has: places on a board, or ports; undefined where they are charged one by one. */
function joinedBy(values: readonly Candidate[]): 'places' | 'ports' | undefined {
  const isApart = values.some(
    ({ kind, text, next = '' }) => kind === 'batch' || (kind === 'count' && Number(text) > 1 && outlets.test(next)),
  )
  const isBoard = values.some(
    ({ kind, typed }) => kind === 'board' && (!isApart || !/^(?:at|all|in one|together|simul)/i.test(typed)),
  )
  return isBoard ? 'places' : isApart ? 'ports' : undefined
}

/** Of packs that hang together the command for that is meant, where the words sound like a charge of one. */
export function ofJoined(
  ranked: readonly Ranked[],
  values: readonly Candidate[],
  vocabulary: Vocabulary,
): readonly Ranked[] {
  const by = joinedBy(values)
  const meant = by && vocabulary.find(command => takes(command, 'packs', by))
  if (!meant || !values.some(({ pack }) => pack?.capacity_Ah !== undefined)) return ranked
  const others = by === 'places' ? ['packs', 'ports'] : ['packs', 'places']
  return given(ranked, meant, one => isOfOne(one) || takes(one, ...others), vocabulary)
}

/** What sounds like the one command is the other. */
function given(
  ranked: readonly Ranked[],
  { name: to }: CommandWords,
  gives: (command: CommandWords) => boolean,
  vocabulary: Vocabulary,
): readonly Ranked[] {
  const from = new Set(vocabulary.filter(gives).map(({ name }) => name))
  const sum = ranked.reduce((all, { intent, share }) => (from.has(intent) ? all + share : all), 0)
  return ranked
    .map(one =>
      one.intent === to ? { ...one, share: one.share + sum } : from.has(one.intent) ? { ...one, share: 0 } : one,
    )
    .toSorted((a, b) => b.share - a.share)
}

const isWatts = ({ kind, text, typed }: Candidate): boolean =>
  kind === 'power' || (kind === 'charger' && !/charg/i.test(typed) && /^[\d.]+W charger$/.test(text))

/** More than this, in C, no charge is asked about as what is drawn; a cell of the commonest type gives about so many volts. */
const [charged_C, cell_V] = [2, 3.7]

/** "I draw 35 A from a 4S 3700, how long": what a pack gives in the air is no charge, but a sum. */
export function ofFlown(
  ranked: readonly Ranked[],
  values: readonly Candidate[],
  vocabulary: Vocabulary,
): readonly Ranked[] {
  const meant = vocabulary.find(command => command.alone && takes(command, 'pack', 'current', 'power'))
  // "150 W at 25.2 V, how many amps": of watts and volts alone the amps are asked.
  const isSum =
    values.length === 2 && values.some(isWatts) && values.some(({ text }) => /^[\d.]+V(?: pack)?$/.test(text))
  if (meant && isSum) return given(ranked, meant, one => one !== meant && takes(one, 'source'), vocabulary)
  const { series = 1, capacity_Ah } = values.find(({ pack }) => pack?.capacity_Ah !== undefined)?.pack ?? {}
  const drawn_A = values.flatMap(({ drawn, kind, text }) =>
    drawn ? Number.parseFloat(text) / (kind === 'current' ? 1 : series * cell_V) : [],
  )[0]
  const isFed = values.some(({ kind }) => kind === 'source')
  if (!meant || capacity_Ah === undefined || drawn_A === undefined || isFed || drawn_A <= charged_C * capacity_Ah)
    return ranked
  return given(
    ranked,
    meant,
    one => one !== meant && takes(one, 'pack') && (takes(one, 'current') || takes(one, 'power')),
    vocabulary,
  )
}

/** "From full down to storage at 1 A": what is stored from above is drained, and no charge is meant. */
export function ofDrained(
  ranked: readonly Ranked[],
  values: readonly Candidate[],
  vocabulary: Vocabulary,
): readonly Ranked[] {
  const meant = vocabulary.find(command => takes(command, 'pack', 'discharge'))
  const levels = values.filter(({ kind }) => kind === 'state')
  const [goal, from] = [levels.find(isToldGoal), levels.find(one => !isToldGoal(one))].map(fullness)
  const stored = fullness({ text: meant?.name ?? '' })
  if (!meant || goal === undefined || from === undefined || stored === undefined) return ranked
  if (from <= goal + aLittle || Math.abs(goal - stored) > aLittle) return ranked
  return given(ranked, meant, command => takes(command, 'from', 'to'), vocabulary)
}

const aLittle = 0.05

/** 0 to 1, as of the commonest cells. */
const fullness = (level: Pick<Candidate, 'text'> | undefined): number | undefined =>
  level && attempt(() => socOf(startOf(readAnyState(level.text).value, lipo, {}), lipo))
