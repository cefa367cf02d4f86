// What is said in other tongues: one text for each family of dangers, and how much of the question was read.

import type { Danger } from '../charging/situation/dangers.ts'
import type { Tongue } from '../language/tongues/glossaries.ts'
import de from './tongues/de.json' with { type: 'json' }
import es from './tongues/es.json' with { type: 'json' }
import fr from './tongues/fr.json' with { type: 'json' }
import it from './tongues/it.json' with { type: 'json' }
import nl from './tongues/nl.json' with { type: 'json' }

const families = {
  fire: ['fire'],
  injury: ['injury'],
  hurt: [
    'swollen',
    'pierced',
    'wet',
    'overfull',
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

const texts: Readonly<Record<Tongue, Readonly<Record<TongueText, string>>>> = { de, es, fr, it, nl }

export const familyOf = (danger: Danger): Family =>
  (Object.keys(families) as (keyof typeof families)[]).find(name =>
    (families[name] as readonly Danger[]).includes(danger),
  ) ?? otherwise

export const textIn = (tongue: Tongue, text: TongueText): string => texts[tongue][text]
