// What workers do: all that would hold the connections for longer than a few milliseconds.

import { planField } from '../../charging/plan/plan.ts'
import type { Chart } from '../../charts/chart.ts'
import { drawPng } from '../../charts/drawing/draw.ts'
import type { Theme } from '../../charts/drawing/theme.ts'

export const plan = planField
export const draw = ({ chart, theme }: { chart: Chart; theme?: Theme }): Promise<Buffer> => drawPng(chart, theme)
