// What is changed by way of trial, by which tests a change must be noticed, and how many of a hundred changes at least.

export interface Area {
  readonly files: readonly string[]
  /** Its own tests, not those of what is built on it: a fault is to be named where it is. */
  readonly tests: readonly string[]
  readonly least: number
}

const core = [
  'tests/unit/charging/**/*.test.ts',
  'tests/unit/envelope/*.test.ts',
  'tests/unit/safety/{pack-care,session,setting,source}.test.ts',
  'tests/outside/*.test.ts',
]

export const areas: Readonly<Record<string, Area>> = {
  envelope: {
    files: ['src/charging/{envelope,situation}/**/*.ts'],
    tests: ['tests/unit/envelope/*.test.ts', 'tests/unit/safety/pack-care.test.ts'],
    least: 90,
  },
  charging: {
    files: ['src/charging/{things,setting,simulation,sources,leads,upkeep}/**/*.ts'],
    tests: core,
    least: 90,
  },
  plan: { files: ['src/charging/plan/*.ts'], tests: core, least: 80 },
  dangers: {
    files: ['src/language/dangers/**/*.ts'],
    tests: ['tests/unit/language/dangers*.test.ts', 'tests/unit/language/dangers/**/*.test.ts'],
    least: 80,
  },
  inbox: { files: ['src/assistant/due/inbox.ts'], tests: ['tests/unit/assistant/inbox.test.ts'], least: 80 },
}
