// For every command: how a situation is written as its question, or why it deals with no battery.

import { commands } from '../../../commands/index.ts'
import type { Entry } from '../../../src/assistant/command.ts'
import { type Style, type Writer, writer } from './notation.ts'
import type { Scene, Stand } from './scene.ts'

export type Options = Readonly<Record<string, string | undefined>>

export interface AskedAs {
  /** How often it is drawn; one that computes for long less often. */
  readonly weight: number
  /** Undefined where this command cannot be asked that. */
  options(scene: Scene, write: Writer): Options | undefined
  /** Asked first, and afterwards, by a moderator. */
  readonly around?: (scene: Scene, write: Writer) => readonly [before: string, after: string]
}

/** Why nobody can charge, drain, store, carry or connect a battery by its answer. */
export interface NoBattery {
  readonly because: string
}

const charge = (scene: Scene, write: Writer) => ({
  pack: write.pack(scene.pack),
  charger: scene.charger && write.charger(scene.charger),
  source: scene.source && write.source(scene.source),
  from: scene.stand && write.stand(scene.stand, scene),
  temperature: degrees(scene, write),
})

const degrees = ({ temperature_C }: Scene, write: Writer) =>
  temperature_C === undefined ? undefined : write.temperature(temperature_C)

const asked = (scene: Scene, write: Writer) =>
  scene.rate_C === undefined ||
  scene.rate_C * scene.pack.capacity_Ah > 60 ||
  scene.rate_C * scene.pack.capacity_Ah < 0.01
    ? undefined
    : write.current(scene, scene.rate_C)

const standing = (scene: Scene, write: Writer) =>
  scene.stand ? `${write.pack(scene.pack)} at ${write.stand(scene.stand, scene)}` : write.pack(scene.pack)

/** A current that no step of the charger reaches down to is asked back. */
const settable = ({ charger, rate_C, pack }: Scene): boolean => {
  if (!charger || rate_C === undefined) return true
  const { steps_A } = charger
  const least_A = 'to_A' in steps_A ? steps_A.by_A : Math.min(...steps_A)
  return rate_C * pack.capacity_Ah >= least_A
}

const timeOptions = (scene: Scene, write: Writer): Options | undefined =>
  settable(scene) ? { ...charge(scene, write), to: scene.to, current: asked(scene, write) } : undefined

const written = (options: Options): string =>
  Object.entries(options)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => `${name}: ${value}`)
    .join(' ')

const inCells = (style: Style): Style =>
  style.stand === 'volts of the pack' ? { ...style, stand: 'volts of a cell' } : style

/** Emptied is another word there than landed. */
const asMeasured = (stand: Stand): Stand =>
  stand.kind === 'word' && stand.word === 'landed' ? { kind: 'share', percent: 4 } : stand

/** What is asked in another way than by a fact for each detail of its kind. */
const inTheirWay: Readonly<Record<string, AskedAs | NoBattery>> = {
  time: { weight: 10, options: timeOptions },
  source: {
    weight: 1,
    options: (scene, write) =>
      scene.source && {
        ...charge(scene, write),
        to: scene.to,
        count: '2',
        charged:
          scene.charged !== undefined && (scene.source.kind === 'pack' || scene.source.kind === 'bank')
            ? write.percent(scene.charged)
            : undefined,
        leave: scene.charged === undefined ? undefined : write.percent(scene.charged / 2),
      },
  },
  plan: {
    weight: 1,
    options: (scene, write) =>
      scene.charger && {
        packs: write.group(2, standing(scene, write)),
        chargers: write.charger(scene.charger),
        sources: scene.source && write.source(scene.source),
        temperature: degrees(scene, write),
      },
  },
  storage: {
    weight: 10,
    options: (scene, write) => {
      const { source: _, ...options } = charge(scene, write)
      return { ...options, discharge: asked(scene, write) }
    },
  },
  cells: {
    weight: 10,
    options: (scene, write) => scene.stand && { pack: write.pack(scene.pack), volts: write.cells(scene.stand, scene) },
  },
  parallel: {
    weight: 4,
    options: (scene, write) =>
      scene.stand && {
        packs: write.group(2, standing(scene, write)),
        charger: scene.charger && write.charger(scene.charger),
      },
  },
  health: {
    weight: 8,
    options: (scene, write) => ({
      pack: write.pack(scene.pack),
      resistance: write.resistance(Number((30 / scene.pack.capacity_Ah).toPrecision(3))),
      temperature: degrees(scene, write),
    }),
  },
  lend: {
    weight: 8,
    options: (scene, write) => ({
      pack: write.pack(scene.pack),
      power: write.power(Number(Math.max(1, scene.pack.series * (scene.rate_C ?? 1) * 2).toPrecision(3))),
      from: scene.stand && write.stand(scene.stand, scene),
      temperature: degrees(scene, write),
    }),
  },
  supply: {
    weight: 6,
    options: (scene, write) =>
      scene.source || settable(scene)
        ? {
            pack: write.pack(scene.pack),
            charger: scene.charger && write.charger(scene.charger),
            source: scene.source && write.source(scene.source),
            current: settable(scene) ? asked(scene, write) : undefined,
          }
        : undefined,
  },
  percent: {
    weight: 10,
    options: (scene, write) => scene.stand && { pack: write.pack(scene.pack), at: write.stand(scene.stand, scene) },
  },
  trim: { weight: 6, options: (scene, write) => ({ pack: write.pack(scene.pack), to: scene.to }) },
  travel: { weight: 6, options: (scene, write) => ({ packs: write.group(2, write.pack(scene.pack)) }) },
  'remind me': {
    weight: 2,
    options: (scene, write) => {
      const options = timeOptions(scene, write)
      return options && { for: `time ${written(options)}` }
    },
  },
  'answer show': {
    weight: 1,
    options: () => ({ title: 'Bench' }),
    around: (scene, write) => [
      `answer save title: Bench question: current ${written({ ...charge(scene, write), to: scene.to })}`,
      'answer remove title: Bench',
    ],
  },
  'log charge': {
    weight: 1,
    options: (scene, write) => ({
      name: `log ${scene.pack.name}`,
      'put-back': write.capacity(scene.pack.capacity_Ah * 0.4),
      // Landed is no measure of a capacity, and volts of the whole pack hang on what the name stands for.
      from: scene.stand && writer(inCells(write.style)).stand(asMeasured(scene.stand), scene),
      temperature: degrees(scene, write),
    }),
  },
  'log show': { because: 'it judges what was noted; the charges to come are asked with other commands' },
  handbook: { because: 'it explains; what leave is asked for is judged as a danger' },
}

const services: NoBattery = { because: 'it is a service: about what is kept or known' }

/** A fact for each detail that a scene has one for, under the name of its kind. */
function byKinds({ name, takes }: Entry): AskedAs {
  const isWritten = (detail: string) => takes[detail]?.kind.name === detail && facts.has(detail)
  const missing = Object.keys(takes).filter(detail => takes[detail]?.required && !isWritten(detail))
  if (!isWritten('pack') || missing.length > 0)
    throw new Error(`"${name}" needs a row of its own here: no scene has ${missing.join(', ') || 'its pack'}`)
  return {
    weight: 10,
    options: (scene, write) =>
      Object.fromEntries(
        Object.entries({ ...charge(scene, write), to: scene.to }).filter(([detail]) => isWritten(detail)),
      ),
  }
}

const facts: ReadonlySet<string> = new Set(['pack', 'charger', 'source', 'from', 'temperature', 'to'])

export const askedAs: Readonly<Record<string, AskedAs | NoBattery>> = Object.fromEntries(
  commands.map(one => [one.name, inTheirWay[one.name] ?? (one.lists ? services : byKinds(one))]),
)
