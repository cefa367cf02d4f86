// How packs hang together, on one board or on ports of their own, decides which command answers for all of them.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Ranked } from '../model/index.ts'
import type { CommandWords, Vocabulary } from '../sentence/vocabulary.ts'
import { outlets } from './charger-told.ts'

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
  const gives = new Set(vocabulary.filter(one => isOfOne(one) || takes(one, ...others)).map(({ name }) => name))
  const given = ranked.reduce((sum, { intent, share }) => (gives.has(intent) ? sum + share : sum), 0)
  return ranked
    .map(one =>
      one.intent === meant.name
        ? { ...one, share: one.share + given }
        : gives.has(one.intent)
          ? { ...one, share: 0 }
          : one,
    )
    .toSorted((a, b) => b.share - a.share)
}
