// Times and energy of simulated charges against the same equations solved by an independent ODE library.

import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { ChargeRequest } from '../../src/charging/charge.ts'
import { chemistries } from '../../src/charging/chemistries.ts'
import type { ChemistryName } from '../../src/charging/chemistry.ts'
import { requestedCell, simulateCharge } from '../../src/charging/simulate.ts'
import { odeCharge } from './ode-charge.ts'

const requests = fc
  .record({
    chemistry: fc.constantFrom<ChemistryName>('LiPo', 'LiHV', 'Li-ion', 'LiFe'),
    capacity_Ah: fc.double({ min: 0.1, max: 20, noNaN: true }),
    rate_C: fc.double({ min: 0.1, max: 3, noNaN: true }),
    startSoc: fc.double({ min: 0, max: 0.8, noNaN: true }),
    below_V: fc.double({ min: 0, max: 0.15, noNaN: true }),
    terminationShare: fc.double({ min: 0.03, max: 0.25, noNaN: true }),
    temperature_C: fc.double({ min: 0, max: 45, noNaN: true }),
    reading_ohmAh: fc.option(fc.double({ min: 0.01, max: 0.2, noNaN: true }), { nil: undefined }),
  })
  .map(
    ({
      chemistry,
      capacity_Ah,
      rate_C,
      startSoc,
      below_V,
      terminationShare,
      temperature_C,
      reading_ohmAh,
    }) => {
      const current_A = rate_C * capacity_Ah
      const request: ChargeRequest = {
        pack: {
          chemistry,
          series: 1,
          parallel: 1,
          capacity_Ah,
          ...(reading_ohmAh !== undefined && { cellResistance_ohm: reading_ohmAh / capacity_Ah }),
        },
        current_A,
        from: { kind: 'soc', soc: startSoc },
        target: { kind: 'voltage', perCell_V: chemistries[chemistry].full_V.value - below_V },
        termination_A: current_A * terminationShare,
        temperature_C,
      }
      return request
    },
  )

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
        termination_A: request.termination_A as number,
      })
      const tolerance = 0.002
      expect(Math.abs(simulated.timeToCutoff_s - solved.timeToCutoff_s)).toBeLessThanOrEqual(
        tolerance * solved.timeToCutoff_s + 1e-3,
      )
      expect(Math.abs(simulated.duration_s - solved.duration_s)).toBeLessThanOrEqual(
        tolerance * solved.duration_s,
      )
      expect(Math.abs(simulated.energy_Wh - solved.energy_Wh)).toBeLessThanOrEqual(
        tolerance * solved.energy_Wh,
      )
    }),
    { numRuns: 300, seed: 20 },
  )
})
