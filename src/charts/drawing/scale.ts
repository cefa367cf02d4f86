// From a chart's numbers to places in the picture, with axes that end at round numbers.

export type Span = readonly [from: number, to: number]

/** So many steps of the same size, from `min` on. */
export interface Steps {
  readonly min: number
  readonly step: number
  readonly count: number
}

const mostSteps = 7

/** The smallest round steps that cover `span`: at most seven, or just `count` where another axis shares their lines. */
export function roundSteps([from, to]: Span, count?: number): Steps {
  const most = count ?? mostSteps
  const power = 10 ** Math.floor(Math.log10((to - from) / most))
  for (const multiple of [1, 2, 5, 10, 20, 50]) {
    const step = multiple * power
    const first = Math.floor(from / step + 1e-9)
    const needed = Math.max(1, Math.ceil(to / step - 1e-9) - first)
    if (needed <= most) return { min: first * step, step, count: count ?? needed }
  }
  throw new RangeError(`no steps from ${from} to ${to}`)
}

export const endOf = ({ min, step, count }: Steps): number => min + count * step

/** Where a value of an axis stands that goes over `px`; these may fall, as they do upwards. */
export const scale =
  (steps: Steps, [from_px, to_px]: Span) =>
  (value: number): number =>
    from_px + ((value - steps.min) / (steps.step * steps.count)) * (to_px - from_px)

/** From the least to the greatest; where they are the same, `about` to each side. */
export function spanOf(values: readonly number[], about?: number): Span {
  if (values.length === 0) return [0, 1]
  const [from, to] = [Math.min(...values), Math.max(...values)]
  const room = about ?? (Math.abs(from) / 10 || 1)
  return to > from ? [from, to] : [from - room, from + room]
}
