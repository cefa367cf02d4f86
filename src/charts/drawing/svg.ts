// SVG as text. Numbers and colours are ours; whatever comes from people goes in as words and is made safe here.

import { drawable } from './text.ts'

type Attributes = Readonly<Record<string, string | number | undefined>>

/** An element with what is already SVG inside; attributes that are undefined are left out. */
export function element(name: string, attributes: Attributes, inside = ''): string {
  const written = Object.entries(attributes).flatMap(([key, value]) =>
    value === undefined ? [] : ` ${key}="${typeof value === 'number' ? rounded(value) : value}"`,
  )
  return `<${name}${written.join('')}>${inside}</${name}>`
}

/** Words at a place: their baseline there, and what `text-anchor` says of them; the middle when absent. */
export const words = (text: string, x: number, y: number, attributes: Attributes = {}): string =>
  element('text', { x, y, 'text-anchor': 'middle', ...attributes }, escaped(text))

export const line = (from: Point, to: Point, attributes: Attributes): string =>
  element('path', { d: pathOf([from, to]), ...attributes })

export type Point = readonly [x: number, y: number]

export const pathOf = (points: readonly Point[]): string =>
  points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${rounded(x)} ${rounded(y)}`).join('')

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' }
export const escaped = (text: string): string => drawable(text).replace(/[&<>]/g, found => escapes[found] as string)

const rounded = (value: number): number => Math.round(value * 100) / 100
