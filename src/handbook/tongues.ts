// What is said in other tongues: one text for each family of dangers, and how much of the question was read.

import type { Danger } from '../charging/situation/dangers.ts'
import { type Tongue, tongues } from '../language/tongues/glossaries.ts'

const families = {
  fire: ['fire'],
  injury: ['injury'],
  hurt: [
    'swollen',
    'pierced',
    'wet',
    'overfull',
    'cellsHurt',
    'homework',
    'bypass',
    'revive',
    'folkRemedy',
    'unknownPack',
    'disposal',
  ],
  look: ['crashed', 'tooLow', 'storedFull', 'keptApart', 'leftOnCharger'],
  warmth: ['hotPack', 'coldPack', 'hotPlace'],
  watch: ['unattended', 'children', 'medical', 'movingVehicle'],
  place: ['softBed', 'burnsNear', 'wayBlocked', 'exhaust', 'propeller', 'sealedBox', 'loose', 'badTransport'],
} as const satisfies Readonly<Record<string, readonly Danger[]>>

/** All that is about how a pack is connected and set. */
const otherwise = 'setting'

type Family = keyof typeof families | typeof otherwise

/** `refused`: values speak against it. `partly`: a part was read, which follows. `english`: an example follows. */
export type TongueText = Family | 'refused' | 'partly' | 'english'

const texts: Readonly<Record<Tongue, { readonly says: Readonly<Record<TongueText, string>> }>> = tongues

export const familyOf = (danger: Danger): Family =>
  (Object.keys(families) as (keyof typeof families)[]).find(name =>
    (families[name] as readonly Danger[]).includes(danger),
  ) ?? otherwise

export const textIn = (tongue: Tongue, text: TongueText): string => texts[tongue].says[text]
