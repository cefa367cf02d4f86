// Packs side by side: energy, mass, energy for its mass, and the current of each at one C-rate.

import { optional, required, service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { labelEnergy_Wh } from '../../src/charging/upkeep/transport.ts'
import { bagKind } from '../../src/language/kinds/session-kinds.ts'
import { packKind, rateKind } from '../../src/language/kinds/values.ts'
import type { WeighedPack } from '../../src/language/things/weighed.ts'
import { onlyOne } from '../shared/problems.words.ts'

const ounce_kg = 0.028349523125

export const compare = service({
  name: 'compare',
  shelf: 'charge compare',
  takes: { packs: required(bagKind), rate: optional(rateKind) },
  examples: [
    'compare packs: 3S 720 LiHV 45g; 3S 850 LiPo 68g',
    'compare packs: 4S 1500 LiPo 178g; 4S 1550 LiHV 172g; 4S 3000 Li-ion 205g rate: 2C',
  ],
  run: ({ packs, rate = 1 }) => {
    if (packs.length < 2) throw onlyOne()
    const entries = packs.map(({ item }) => entryOf(item, rate))
    const weighed = entries.filter(isWeighed)
    return {
      entries,
      rate_C: rate,
      most: largest(entries, ({ energy_Wh }) => energy_Wh),
      densest: weighed.length < 2 ? undefined : largest(weighed, perKilogram),
      ounces: ounces(weighed),
    }
  },
  figures: ({ entries }) =>
    entries.flatMap((entry, index) => [
      figure.energy('energy', entry.energy_Wh, undefined, index + 1),
      figure.current('current', entry.current_A, undefined, index + 1),
      figure.mass('mass', entry.mass_kg && entry.mass_kg * 1000, undefined, index + 1),
      figure.density('energyPerMass', isWeighed(entry) ? perKilogram(entry) : undefined, undefined, index + 1),
    ]),
})

export interface Entry {
  /** As the pack is written. */
  readonly name: string
  readonly pack: Pack
  readonly energy_Wh: number
  readonly current_A: number
  readonly mass_kg: number | undefined
}

interface Weighed extends Entry {
  readonly mass_kg: number
}

function entryOf({ pack, mass_kg }: WeighedPack, rate_C: number): Entry {
  return {
    name: packKind.write(pack),
    pack,
    energy_Wh: labelEnergy_Wh(pack),
    current_A: pack.capacity_Ah * rate_C,
    mass_kg,
  }
}

export const isWeighed = (entry: Entry): entry is Weighed => entry.mass_kg !== undefined
/** In Wh per kg. */
export const perKilogram = ({ energy_Wh, mass_kg }: Weighed): number => energy_Wh / mass_kg

/** The first of those with the most. */
const largest = <E>(entries: readonly E[], of: (entry: E) => number): E =>
  entries.reduce((best, entry) => (of(entry) > of(best) ? entry : best))

/** What another ounce buys, from each pack to the next heavier. */
export interface Step {
  readonly lighter: Weighed
  readonly heavier: Weighed
  readonly more_oz: number
  readonly more_kg: number
  readonly gain_Wh: number
}

function ounces(weighed: readonly Weighed[]): readonly Step[] {
  const byMass = weighed.toSorted((a, b) => a.mass_kg - b.mass_kg)
  const steps = byMass.slice(1).map((heavier, index) => {
    const lighter = byMass[index] as Weighed
    const more_kg = heavier.mass_kg - lighter.mass_kg
    const gain_Wh = heavier.energy_Wh - lighter.energy_Wh
    return { lighter, heavier, more_kg, more_oz: more_kg / ounce_kg, gain_Wh }
  })
  return steps.filter(({ more_oz }) => more_oz >= 0.05)
}
