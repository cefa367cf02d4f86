// How a chart of a reply becomes a picture, for whoever shows pictures.

import type { Chart } from '../charts/chart.ts'
import type { Theme } from '../charts/drawing/theme.ts'
import type { Turn } from './occasion.ts'

/** As PNG; rejects with `tooMuchAtOnce` where whoever asks has too much under way already. */
export type Draw = (chart: Chart, turn: Turn, theme?: Theme) => Promise<Uint8Array>
