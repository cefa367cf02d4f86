// Cautions for a field session: several packs, chargers and sources at once.

import { type Caution, cautionsFor, generalCaution } from './cautions.ts'
import type { Situation } from './situation.ts'

export interface SessionSituation extends Situation {
  /** Some pack is said to be swollen, pierced or the like. */
  readonly unsound: boolean
  /** More than one port is in use. */
  readonly several: boolean
}

const setAside: Caution = {
  key: 'setAside',
  text: 'Put the unsound pack outdoors on bare ground, away from people, vehicles and the other packs, and hand it in where batteries are taken back.',
}

const severalAtOnce: Caution = {
  key: 'severalAtOnce',
  text: 'Several packs charge at once: lay them apart on a surface that cannot burn, in the shade, and stay where you see every one of them.',
}

const coolFirst: Caution = {
  key: 'coolFirst',
  text: 'Let a pack that has just flown cool down before its turn; look at each one and feel it before you connect it.',
}

/** More than this nobody reads. */
const mostCautions = 6

/** The most pressing one first; the general one always closes the list. */
export function sessionCautions({
  unsound,
  several,
  ...situation
}: SessionSituation): readonly [Caution, ...Caution[]] {
  const [first, ...rest] = cautionsFor(situation)
  const own = [...(unsound ? [setAside] : []), ...(several ? [severalAtOnce] : [])]
  const others = rest.filter(({ key }) => key !== 'inspect' && key !== generalCaution.key)
  return [first, ...[...own, ...others, coolFirst].slice(0, mostCautions - 2), generalCaution]
}
