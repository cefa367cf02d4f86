// ECharts with only the parts we draw with, rendering to SVG without a browser. Import it lazily: it is large.

import { CustomChart, LineChart } from 'echarts/charts'
import {
  GridComponent,
  LegendComponent,
  MarkAreaComponent,
  MarkLineComponent,
  TitleComponent,
} from 'echarts/components'
import { type EChartsCoreOption, init, setPlatformAPI, use } from 'echarts/core'
import { SVGRenderer } from 'echarts/renderers'
import { textWidth } from './text.ts'

use([
  CustomChart,
  GridComponent,
  LegendComponent,
  LineChart,
  MarkAreaComponent,
  MarkLineComponent,
  SVGRenderer,
  TitleComponent,
])

setPlatformAPI({
  measureText: (text, font = '') => ({
    width: textWidth(text, Number(/([\d.]+)px/.exec(font)?.[1] ?? 12), font.includes('bold')),
  }),
})

/** The SVG of an ECharts option: the same text for the same option, whatever was drawn before. */
export function renderSvg(option: EChartsCoreOption, width_px: number, height_px: number): string {
  const chart = init(null, null, { renderer: 'svg', ssr: true, width: width_px, height: height_px })
  try {
    chart.setOption(option)
    return withoutProcessState(chart.renderToSVGString())
  } finally {
    chart.dispose()
  }
}

/** The renderer numbers its ids through the life of the process, and adds hover styles that no chat uses. */
const withoutProcessState = (svg: string): string =>
  svg
    .replace(/<style ?>.*?<\/style>\n?/s, '')
    .replace(/ class="[^"]*"/g, '')
    .replace(/(id="|url\(#)zr\d+-/g, '$1chart-')
