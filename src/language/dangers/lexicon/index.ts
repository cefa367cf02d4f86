// All concepts, each on those before it.

import { away } from './away.ts'
import { denial } from './denial.ts'
import { doing } from './doing.ts'
import { harm } from './harm.ts'
import { mending } from './mending.ts'
import { minding } from './minding.ts'
import { people } from './people.ts'
import { places } from './places.ts'
import { relating } from './relating.ts'
import { things } from './things.ts'
import { unsound } from './unsound.ts'
import { warmth } from './warmth.ts'

export const concepts = {
  ...denial,
  ...people,
  ...away,
  ...minding,
  ...things,
  ...unsound,
  ...warmth,
  ...places,
  ...doing,
  ...mending,
  ...harm,
  ...relating,
} as const
