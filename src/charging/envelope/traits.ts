// What kind of pack, charger and source it is, where that calls for a word of care. A trait refuses nothing.

import { practice, type Rule } from '../situation/rule.ts'
import type { Situation } from '../situation/situation.ts'
import { lipo } from '../things/chemistries.ts'

export interface Trait<W extends 'care' | 'note' = 'care' | 'note'> extends Rule<W> {
  fits(situation: Situation): boolean
}

const trait = <const W extends 'care' | 'note'>(
  weight: W,
  from: string,
  fits: (situation: Situation) => boolean,
): Trait<W> => ({ weight, from, fits })

const charges = ({ act }: Situation): boolean => act === 'charge' || act === 'board'
const packMakers = practice('pack makers')

/** How far its full lies from that of the commonest cells, whose setting it is mistaken for, in V. */
const fullBeside = ({ pack }: Situation): number =>
  pack === undefined ? 0 : pack.chemistry.full_V.value - lipo.full_V.value

export const traits = {
  starterUnmeasured: trait(
    'care',
    practice('a lead-acid battery is measured before anything is taken from it'),
    ({ source }) => source?.kind === 'vehicle outlet' && source.engine === 'off' && source.rest_V === undefined,
  ),
  starter: trait(
    'care',
    practice('a starter battery keeps what starts the engine'),
    ({ source }) => source?.kind === 'vehicle outlet' && source.engine === 'off' && source.battery !== 'deep-cycle',
  ),
  engineRuns: trait(
    'note',
    practice('never in a moving vehicle, never in a closed space'),
    ({ source }) => source?.kind === 'vehicle outlet' && source.engine === 'running',
  ),
  batterySource: trait('note', packMakers, ({ source }) => source?.kind === 'battery'),
  powerBank: trait(
    'note',
    practice('power banks switch off when they are asked too much'),
    ({ source }) => source?.kind === 'power bank',
  ),
  mains: trait(
    'note',
    practice('a supply stands between mains and a charger; engines run in the open'),
    ({ source }) => source?.kind === 'watts' && source.of === 'mains',
  ),
  panel: trait(
    'care',
    practice('what the sun gives changes by the minute'),
    ({ source }) => source?.kind === 'watts' && source.of === 'panel',
  ),
  board: trait('care', practice('a board hides what one pack does'), ({ act }) => act === 'board'),
  onlyAsLabelled: trait('note', packMakers, s => charges(s) && fullBeside(s) > 0),
  neverOtherMode: trait('note', packMakers, s => charges(s) && fullBeside(s) < 0),
  singleCell: trait(
    'note',
    packMakers,
    s => charges(s) && !s.kindOnly && s.pack?.series === 1 && !s.doubts.includes('cellsUnknown'),
  ),
  balance: trait('note', packMakers, s => charges(s) && !s.kindOnly && (s.pack?.series ?? 1) > 1),
  labelRate: trait('note', packMakers, s => charges(s) && s.pack?.labelRate_C !== undefined),
  drained: trait('note', packMakers, ({ act }) => act === 'drain'),
  measured: trait('note', practice('a reading that decides is taken twice'), ({ cells_V }) => cells_V !== undefined),
  metered: trait('note', practice('the meter is checked before the charger'), ({ meter }) => meter !== undefined),
  carried: trait('note', 'IATA DGR 2.3', ({ act }) => act === 'carry'),
  looked: trait('note', packMakers, s => charges(s)),
} as const satisfies Readonly<Record<string, Trait>>

export type TraitKey = keyof typeof traits
