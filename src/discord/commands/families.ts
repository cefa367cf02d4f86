// Where each command stands in Discord's menu: few names at the top, so that people find theirs.

/** By family and the name in it. What is not listed stands by itself, or in the family of its first word. */
const families: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  charge: {
    current: 'current',
    time: 'time',
    percent: 'percent',
    plan: 'plan',
    parallel: 'parallel',
    compare: 'compare',
    energy: 'energy',
  },
  care: { storage: 'storage', cells: 'cells', health: 'health', trim: 'trim', travel: 'travel' },
  supply: { charger: 'supply', source: 'source', lead: 'lead', lend: 'lend' },
  club: { rules: 'rules', limits: 'house show', set: 'house set', history: 'history', undo: 'undo' },
  learn: {
    handbook: 'handbook',
    lessons: 'lesson list',
    read: 'lesson read',
    quiz: 'lesson ask',
    answer: 'lesson answer',
    hello: 'hello',
  },
  me: { export: 'export me', forget: 'forget me' },
}

export interface Shelf {
  readonly family: string
  /** Absent where the command stands by itself. */
  readonly sub?: string
}

const listed: ReadonlyMap<string, Shelf> = new Map(
  Object.entries(families).flatMap(([family, members]) =>
    Object.entries(members).map(([sub, command]) => [command, { family, sub }] as const),
  ),
)

export function shelfOf(command: string): Shelf {
  const [family = command, sub] = command.split(' ')
  return listed.get(command) ?? (sub === undefined ? { family } : { family, sub })
}

/** Also by the command's own name, under which it stood before. */
export const commandAt = (family: string, sub: string | undefined): string =>
  sub === undefined ? family : (families[family]?.[sub] ?? `${family} ${sub}`)

/** Of a club's things: of no use to somebody who has us with them elsewhere. */
export const isOfClub = (family: string): boolean => family === 'club' || family === 'answer'
