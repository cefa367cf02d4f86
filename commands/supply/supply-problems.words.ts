// What is said where a question about a supply, a lead or a load lacks something or does not add up.

import { Problem } from '../../src/ground/problem.ts'
import { percentKind } from '../../src/language/kinds/values.ts'

export const uselessConverter = (efficiency: number): Problem =>
  new Problem({
    what: ({ say }) => say`No converter is that lossy.`,
    token: percentKind.write(efficiency),
    expected: ({ say }) => say`an efficiency from 30 to 100 %`,
    example: 'efficiency: 85%',
  })

export const nothingToSupply = (): Problem =>
  new Problem({
    what: ({ say }) => say`I need the supply, or the pack that it is to charge.`,
    expected: ({ say }) => say`source: a supply to see what it gives, or pack: to find one`,
    example: 'supply pack: 4S 1500 LiPo current: 2A',
  })

export const shareOfNothing = (): Problem =>
  new Problem({
    what: ({ say }) => say`A drop in percent needs the voltage that is fed in.`,
    expected: ({ say }) => say`voltage: what the lead is fed with, or the drop in volts`,
    example: 'lead length: 2m current: 8A voltage: 12V drop: 3%',
  })
