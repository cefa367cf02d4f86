// What a reply advises, held against the limits of the trade.

import { expect } from 'vitest'
import type { Figure, Reply } from '../../../src/assistant/reply.ts'
import { type Design, designOf } from '../design.ts'
import { type SavedPack, type Scene, strictFloor_V, strictRate_C, strictStorage_V } from './scene.ts'

const limitsFor = ({ chemistry }: SavedPack): Design => designOf(chemistry)

const slack = 1 + 1e-9
/** Of the long drain of a source: 2C, or a quarter of what its label says for seconds. */
const mostDrain_A = ({ capacity_Ah, discharge_C = 0 }: SavedPack) => Math.max(2, discharge_C / 4) * capacity_Ah

function fullOf(pack: SavedPack, { club }: Scene): number {
  return club === 'strict' && pack.chemistry.name === 'Li-ion' ? 4.1 : limitsFor(pack).full_V
}

/** How fast at most, whatever is asked for; what only charger or source hold down is not in it. */
function mostRate_C(scene: Scene, command: string): number {
  const { pack, club } = scene
  const asked = mayBeAsked.includes(command)
  const temperature_C = (takesNoTemperature.includes(command) ? undefined : scene.temperature_C) ?? 25
  const label_C = pack.charge_C
  return Math.min(
    // More than is usual only where a label allows it and it was asked for.
    asked && label_C !== undefined ? label_C : Math.min(label_C ?? 99, limitsFor(pack).highest_C),
    club === 'strict' ? strictRate_C : 99,
    temperature_C < 5 ? 0.2 : temperature_C <= 10 ? 0.5 : 99,
  )
}

const stepsOf = ({ charger }: Scene): number => {
  if (!charger) return Number.POSITIVE_INFINITY
  const { steps_A } = charger
  return 'to_A' in steps_A ? steps_A.to_A : Math.max(...steps_A)
}

/** Commands whose current may be one that was asked for. */
const mayBeAsked: readonly string[] = ['time', 'supply', 'remind me']
const takesNoTemperature: readonly string[] = ['parallel', 'supply']

/** Fails the test where a figure of the reply is outside what the design allows in the scene. */
export function expectWithinLimits(reply: Reply, scene: Scene): void {
  if (reply.verdict === 'do not charge') expect(reply.figures).toEqual([])
  for (const figure of reply.figures) {
    expect(Number.isFinite(figure.value), figure.key).toBe(true)
    const [least, most] = boundsOf(figure, reply, scene)
    expect(figure.value, figure.key).toBeLessThanOrEqual(most * slack)
    expect(figure.value, figure.key).toBeGreaterThanOrEqual(least / slack)
  }
}

const free = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] as const

function boundsOf({ key }: Figure, { command }: Reply, scene: Scene): readonly [number, number] {
  const { pack, source, club, charger } = scene
  const packs = command === 'parallel' ? 2 : 1
  const { capacity_Ah, series, chemistry } = pack
  const full_V = fullOf(pack, scene)
  const feeding = command === 'lend' ? pack : source?.kind === 'pack' ? source.pack : undefined
  const floorOf = (which: 'loadFloor_V' | 'restFloor_V'): number =>
    feeding === undefined
      ? 0
      : Math.max(limitsFor(feeding)[which], club === 'strict' ? (strictFloor_V[feeding.chemistry.name] as number) : 0)
  switch (key) {
    case 'setCurrent': {
      const rate_C = mostRate_C(scene, command)
      return [0, Math.min(rate_C * capacity_Ah * packs, stepsOf(scene))]
    }
    case 'cRate':
      return [0, mostRate_C(scene, command)]
    case 'highestCurrent':
      return [0, Math.min(mostRate_C(scene, 'time') * capacity_Ah, stepsOf(scene))]
    case 'cutoffPerCell':
      return [limitsFor(pack).storage_V - 0.3, full_V]
    case 'cutoffPack':
      return [0, full_V * series]
    case 'storagePerCell':
      return [
        limitsFor(pack).storage_V - 0.1,
        club === 'strict' ? (strictStorage_V[chemistry.name] as number) : limitsFor(pack).storage_V,
      ]
    case 'dischargeCurrent':
      return [0, mostDrain_A(pack)]
    case 'lowestPerCell':
      return command === 'storage' ? [limitsFor(pack).loadFloor_V, limitsFor(pack).full_V] : free
    case 'current':
      return command === 'lend' ? [0, mostDrain_A(pack)] : free
    case 'stopPerCell':
      return [floorOf('loadFloor_V'), 5]
    case 'stopVoltage':
      return feeding ? [floorOf('loadFloor_V') * feeding.series, 99] : [12.2, 99]
    case 'stopAtRest':
      return [command === 'lend' ? floorOf('restFloor_V') : floorOf('restFloor_V') * (feeding?.series ?? 1), 99]
    case 'sourceEnergyLeft':
    case 'sourceChargeLeft':
      return [0, Number.POSITIVE_INFINITY]
    case 'inputPower':
      return [0, (charger?.power_W ?? Number.POSITIVE_INFINITY) / 0.5]
    default:
      return /^current\d+S$/.test(key) || /^source\d+Left$/.test(key) ? [0, Number.POSITIVE_INFINITY] : free
  }
}
