// Times and energy of simulated charges against the same equations solved by an independent ODE library.

import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { ChargeRequest } from '../../src/charging/simulation/charge.ts'
import { requestedCell, simulateCharge } from '../../src/charging/simulation/simulate.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import { cases } from '../support/cases.ts'
import { odeCharge } from './ode-charge.ts'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const maybe = (arbitrary: fc.Arbitrary<number>) => fc.option(arbitrary, { nil: undefined })

const requests = fc
  .record({
    chemistry: fc.constantFrom(...chemistries),
    capacity_Ah: number(0.1, 20),
    rate_C: number(0.1, 3),
    startSoc: number(0, 0.8),
    below_V: number(0, 0.15),
    terminationShare: number(0.03, 0.25),
    temperature_C: number(0, 45),
    reading_ohmAh: maybe(number(0.01, 0.2)),
    powerShare: maybe(number(0.7, 1)),
    stepsDown: fc.boolean(),
  })
  .map(drawn => {
    const { chemistry, capacity_Ah, reading_ohmAh, powerShare } = drawn
    const current_A = drawn.rate_C * capacity_Ah
    const perCell_V = chemistry.full_V.value - drawn.below_V
    const request: ChargeRequest = {
      pack: {
        chemistry,
        series: 1,
        parallel: 1,
        capacity_Ah,
        ...(reading_ohmAh !== undefined && { cellResistance_ohm: reading_ohmAh / capacity_Ah }),
      },
      current_A,
      from: { kind: 'soc', soc: drawn.startSoc },
      target: { kind: 'voltage', perCell_V },
      termination_A: drawn.stepsDown ? undefined : current_A * drawn.terminationShare,
      end: drawn.stepsDown ? 'steps' : undefined,
      temperature_C: drawn.temperature_C,
      ...(powerShare !== undefined && { power_W: powerShare * current_A * perCell_V }),
    }
    return request
  })

test('the ODE library gives the same times and energy within 0.2 %', () => {
  fc.assert(
    fc.property(requests, request => {
      const simulated = simulateCharge(request)
      fc.pre(!simulated.stages.some(stage => stage.kind === 'precharge'))
      const solved = odeCharge({
        cell: requestedCell(request),
        startSoc: simulated.startSoc,
        current_A: request.current_A,
        cutoff_V: (request.target as { perCell_V: number }).perCell_V,
        termination_A: request.termination_A ?? 0,
        stepsDown: request.end === 'steps',
        ...(request.power_W !== undefined && { power_W: request.power_W }),
      })
      const tolerance = 0.002
      expect(Math.abs(simulated.timeToCutoff_s - solved.timeToCutoff_s)).toBeLessThanOrEqual(
        tolerance * solved.timeToCutoff_s + 1e-3,
      )
      expect(Math.abs(simulated.duration_s - solved.duration_s)).toBeLessThanOrEqual(tolerance * solved.duration_s)
      expect(Math.abs(simulated.energy_Wh - solved.energy_Wh)).toBeLessThanOrEqual(tolerance * solved.energy_Wh)
    }),
    { ...cases(300), seed: 20 },
  )
})
