// What was learned stays small. That it is what training gives, byte for byte, `.ci/run` shows: it trains anew.

import { statSync } from 'node:fs'
import { expect, it } from 'vitest'

it.each(['language/model/model.json', 'language/dangers/opinion/weights.json', 'handbook/search/model.json'])(
  'src/%s is below one megabyte',
  path => {
    expect(statSync(`src/${path}`).size).toBeLessThan(1_000_000)
  },
)
