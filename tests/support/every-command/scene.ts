// Situations as facts, whatever they are asked with and however they are written; and what makes one worse.

import fc from 'fast-check'
import { chemistries } from '../../../src/charging/things/chemistries.ts'
import type { Chemistry } from '../../../src/charging/things/chemistry.ts'

/** Where a pack stands: in volts of its lowest cell, as a share of its charge, or by a word. */
export type Stand =
  | { readonly kind: 'volts'; readonly perCell_V: number }
  | { readonly kind: 'share'; readonly percent: number }
  | { readonly kind: 'word'; readonly word: 'full' | 'storage' | 'landed' }

export interface SavedPack {
  /** As it is saved in the kit of every club of the tests. */
  readonly name: string
  readonly chemistry: Chemistry
  readonly series: number
  readonly capacity_Ah: number
  /** The charge rate and the discharge rate on its label. */
  readonly charge_C?: number
  readonly discharge_C?: number
}

export interface SceneCharger {
  readonly steps_A: readonly number[] | { readonly to_A: number; readonly by_A: number }
  readonly power_W: number
  readonly most: number
  readonly input_V: readonly [number, number]
}

export type SceneSource =
  | { readonly kind: 'PD'; readonly power_W: number }
  | { readonly kind: 'supply'; readonly volts: number; readonly amps: number }
  | { readonly kind: 'car'; readonly fuse_A: number; readonly running: boolean; readonly rest_V?: number }
  | { readonly kind: 'bank'; readonly energy_Wh: number; readonly power_W: number }
  | { readonly kind: 'pack'; readonly pack: SavedPack }

export interface Scene {
  readonly pack: SavedPack
  readonly stand: Stand | undefined
  readonly to: 'full' | 'storage' | undefined
  readonly charger: SceneCharger | undefined
  readonly source: SceneSource | undefined
  /** How full a source is that is a battery, in percent. */
  readonly charged: number | undefined
  /** Asked for, over the capacity of the pack. */
  readonly rate_C: number | undefined
  readonly temperature_C: number | undefined
  /** A club without rules of its own, or one that is stricter in all. */
  readonly club: 'plain' | 'strict'
}

const words = ['avocet', 'bittern', 'curlew', 'dunlin', 'egret', 'fulmar', 'godwit', 'heron', 'ibis']

/** Of each chemistry a few, with and without rates on the label. */
export const savedPacks: readonly SavedPack[] = chemistries.flatMap((chemistry, kind) =>
  [
    { series: 1, capacity_Ah: 0.55 },
    { series: 3, capacity_Ah: 0.72, discharge_C: 50 },
    { series: 4, capacity_Ah: 1.5, charge_C: 2 },
    { series: 6, capacity_Ah: 5, charge_C: 5, discharge_C: 30 },
    { series: 2, capacity_Ah: 12 },
  ].map((label, size) => ({ ...label, chemistry, name: `${words[size]} ${words[5 + kind]}` })),
)

const ofEach = (volts: (chemistry: Chemistry) => number): Readonly<Record<string, number>> =>
  Object.fromEntries(chemistries.map(chemistry => [chemistry.name, Number(volts(chemistry).toFixed(2))]))

/** The volts of storage that the strict club has. */
export const strictStorage_V = ofEach(({ storage_V }) => storage_V.value - 0.05)
/** The floor of its sources. */
export const strictFloor_V = ofEach(({ loadFloor_V }) => loadFloor_V.value + 0.2)
/** The most it charges with, of any pack. */
export const strictRate_C = 0.5

const perhaps = <T>(some: fc.Arbitrary<T>) => fc.option(some, { nil: undefined, freq: 2 })

const someStand: fc.Arbitrary<Stand> = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: 1, max: 100 }).map(percent => ({ kind: 'share' as const, percent })) },
  {
    weight: 2,
    arbitrary: fc
      .integer({ min: 180, max: 445 })
      .map(hundredths => ({ kind: 'volts' as const, perCell_V: hundredths / 100 })),
  },
  {
    weight: 2,
    arbitrary: fc
      .constantFrom('full' as const, 'storage' as const, 'landed' as const)
      .map(word => ({ kind: 'word' as const, word })),
  },
)

const someCharger: fc.Arbitrary<SceneCharger> = fc.record({
  steps_A: fc.constantFrom<SceneCharger['steps_A'][]>(
    [0.5, 1, 2, 4],
    [0.1, 0.3],
    [1, 2.5, 5],
    { to_A: 10, by_A: 0.1 },
    { to_A: 20, by_A: 0.05 },
  ),
  power_W: fc.constantFrom(5, 50, 80, 200, 600),
  most: fc.constantFrom(4, 6, 6, 8),
  input_V: fc.constantFrom<(readonly [number, number])[]>([9, 20], [10, 30], [12.24, 20], [5, 5.5], [4.5, 60]),
})

export const someSource: fc.Arbitrary<SceneSource> = fc.oneof(
  fc.constantFrom(15, 45, 65, 100, 240).map(power_W => ({ kind: 'PD' as const, power_W })),
  fc.record({
    kind: fc.constant('supply' as const),
    volts: fc.constantFrom(5, 9, 12, 13.8, 24, 30),
    amps: fc.constantFrom(1, 2.5, 10, 20),
  }),
  fc
    .tuple(fc.constantFrom(10, 15, 20), fc.boolean(), perhaps(fc.constantFrom(11.8, 12.2, 12.5, 12.8)))
    .map(([fuse_A, running, rest_V]) => ({
      kind: 'car' as const,
      fuse_A,
      running,
      ...(!running && rest_V !== undefined && { rest_V }),
    })),
  fc.constantFrom(20, 74, 150).map(energy_Wh => ({ kind: 'bank' as const, energy_Wh, power_W: 45 })),
  fc.constantFrom(...savedPacks.slice(3)).map(pack => ({ kind: 'pack' as const, pack })),
)

export const someScene: fc.Arbitrary<Scene> = fc.record({
  pack: fc.constantFrom(...savedPacks),
  stand: fc.oneof({ weight: 3, arbitrary: someStand }, { weight: 1, arbitrary: fc.constant(undefined) }),
  to: fc.constantFrom(undefined, undefined, 'full' as const, 'storage' as const),
  charger: perhaps(someCharger),
  source: perhaps(someSource),
  charged: perhaps(fc.integer({ min: 5, max: 100 })),
  rate_C: fc.constantFrom(undefined, undefined, 0.03, 0.05, 0.1, 0.2, 0.5, 1, 1.5, 2, 4, 6),
  temperature_C: fc.oneof(
    { weight: 4, arbitrary: fc.constant(undefined) },
    { weight: 4, arbitrary: fc.integer({ min: 3, max: 43 }) },
    { weight: 1, arbitrary: fc.integer({ min: -30, max: 80 }) },
  ),
  club: fc.constantFrom('plain' as const, 'plain' as const, 'strict' as const),
})

const anyCharger: SceneCharger = { steps_A: { to_A: 20, by_A: 0.05 }, power_W: 600, most: 8, input_V: [9, 20] }

/** Something that makes a situation worse. */
export interface Hazard {
  readonly name: string
  worse(scene: Scene): Scene
  /** Whoever is told of it refuses, whatever else is asked. */
  readonly refused: boolean
  /** Undefined where it holds of every command and scene. */
  onlyWhere?(command: string, scene: Scene): boolean
}

export const hazards: readonly Hazard[] = [
  {
    name: 'a dead cell',
    refused: true,
    worse: scene => ({
      ...scene,
      stand: { kind: 'volts', perCell_V: Number((scene.pack.chemistry.damage_V.value - 0.1).toFixed(2)) },
    }),
  },
  {
    name: 'a cell above full',
    refused: false,
    // A pack that is low is charged on its way to storage, and lends nothing; a full one is drained: another deed.
    onlyWhere: (command, { stand }) =>
      (command !== 'storage' && command !== 'lend') || (stand?.kind === 'word' && stand.word === 'full'),
    // What is worse already stays.
    worse: scene => {
      const { damage_V, full_V } = scene.pack.chemistry
      const above_V = Number((full_V.value + 0.04).toFixed(2))
      const told_V = scene.stand?.kind === 'volts' ? scene.stand.perCell_V : above_V
      const isWorse = told_V < damage_V.value || told_V > above_V
      return isWorse ? scene : { ...scene, stand: { kind: 'volts', perCell_V: above_V } }
    },
  },
  { name: 'great heat', refused: true, worse: scene => ({ ...scene, temperature_C: 120 }) },
  { name: 'great cold', refused: true, worse: scene => ({ ...scene, temperature_C: -40 }) },
  {
    name: 'cold that allows a slow charge',
    refused: false,
    worse: scene =>
      (scene.temperature_C ?? 25) > 25 ? scene : { ...scene, temperature_C: Math.min(scene.temperature_C ?? 25, 3) },
  },
  {
    name: 'a source outside the window of the charger',
    refused: true,
    // Elsewhere the charger would change and no source be told.
    onlyWhere: command => !['storage', 'parallel'].includes(command),
    worse: scene => ({
      ...scene,
      charger: { ...(scene.charger ?? anyCharger), input_V: [12.24, 20] },
      source: { kind: 'supply', volts: 9, amps: 10 },
    }),
  },
  {
    name: 'a source at its floor',
    refused: true,
    worse: scene => ({ ...scene, source: { kind: 'car', fuse_A: 10, running: false, rest_V: 11.8 } }),
  },
]
