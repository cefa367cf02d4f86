// The current that is said to be enough for a time, beside the same charge solved by an independent ODE library.

import { afterAll, expect, test } from 'vitest'
import { commands } from '../../commands/index.ts'
import { requestedCell } from '../../src/charging/simulation/simulate.ts'
import { termsOf } from '../../src/charging/simulation/terms.ts'
import { readPack } from '../../src/language/things/pack.ts'
import { demoAsking } from '../support/demo-asking.ts'
import { endFaultless } from '../support/end-faultless.ts'
import { odeCharge } from './ode-charge.ts'

const asking = await demoAsking(commands)
afterAll(() => endFaultless(asking))

test.each([
  ['4S 1500 LiPo', 20, 2],
  ['3S 2200 LiHV', 30, 3],
  ['2S 2600 Li-ion', 40, 2],
])(
  'by the ODE library a charge with it is over in time, and not in nine tenths of it: %s from %d percent in %d h',
  async (pack, percent, hours) => {
    const { figures } = await asking.ask(`time pack: ${pack} from: ${percent}% within: ${hours}h`)
    const current_A = figures.find(({ key }) => key === 'enoughCurrent')?.value ?? Number.NaN
    const { value } = readPack(pack)
    const startSoc = percent / 100
    const perCell_V = value.chemistry.full_V.value
    const request = {
      pack: value,
      current_A,
      from: { kind: 'soc', soc: startSoc },
      target: { kind: 'voltage', perCell_V },
    } as const
    const solved = odeCharge({
      cell: requestedCell(request),
      startSoc,
      current_A,
      cutoff_V: perCell_V,
      termination_A: termsOf(request).termination_A,
      stepsDown: false,
    })
    expect(solved.duration_s).toBeLessThanOrEqual(hours * 3600 * 1.002)
    expect(solved.duration_s).toBeGreaterThan(hours * 3600 * 0.9)
  },
)
