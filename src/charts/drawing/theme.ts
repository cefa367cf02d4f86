// The colours of a picture on a light and on a dark page: the colour-blind safe palette of Okabe and Ito.

export type Theme = 'light' | 'dark'

export interface Colours {
  readonly background: string
  readonly text: string
  readonly faint: string
  readonly grid: string
  /** Of series and groups, in order. */
  readonly inks: readonly string[]
  readonly stage: string
  readonly band: string
}

// M. Okabe, K. Ito, Color Universal Design (2002, revised 2008).
const blue = '#0072B2'
const skyBlue = '#56B4E9'
const orange = '#E69F00'
const vermillion = '#D55E00'
const green = '#009E73'
const purple = '#CC79A7'
const yellow = '#F0E442'

export const colours: Readonly<Record<Theme, Colours>> = {
  light: {
    background: '#FFFFFF',
    text: '#1A1A1A',
    faint: '#555555',
    grid: '#DDDDDD',
    inks: [blue, vermillion, green, purple],
    stage: 'rgba(0,0,0,0.06)',
    band: 'rgba(230,159,0,0.3)',
  },
  dark: {
    background: '#1B1D21',
    text: '#F2F2F2',
    faint: '#BBBFC6',
    grid: '#3A3D44',
    inks: [skyBlue, orange, green, purple],
    stage: 'rgba(255,255,255,0.08)',
    band: `${yellow}38`,
  },
}

/** Tells series apart where colour does not: solid, dashed, dotted, dash-dot. */
export const dashes: readonly (string | undefined)[] = [undefined, '7 4', '2 3', '9 3 2 3']
/** Paths about the point 0, 0: disc, diamond, square, triangle. */
export const symbols: readonly string[] = [
  'M-4 0a4 4 0 1 0 8 0a4 4 0 1 0 -8 0',
  'M0 -5L5 0L0 5L-5 0Z',
  'M-4 -4H4V4H-4Z',
  'M0 -5L5 4H-5Z',
]

/** The `index`th of a list that starts again at its end. */
export const nth = <T>(list: readonly T[], index: number): T => list[index % list.length] as T
