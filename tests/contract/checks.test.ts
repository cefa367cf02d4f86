// No figure without a check: docs/checks.md names one for each that a reply can show; `npm run docs` writes it anew.

import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { checks, checksFile, checksPage, figureKeys, figuresOf } from '../../docs/write/checks.ts'

it('every figure stands in one row, and no row speaks of what is not shown', () => {
  expect(checks.flatMap(figuresOf).toSorted()).toEqual([...figureKeys].toSorted())
  for (const one of checks) {
    const each = one.figures.split(' ').filter(figures => figuresOf({ ...one, figures }).length === 0)
    expect(each, one.title).toEqual([])
  }
})

it.each(checks)('$title is a test of $file', ({ file, title }) => {
  expect(readFileSync(file, 'utf8')).toContain(title)
})

it('the page is of today', () => expect(readFileSync(checksFile, 'utf8'), 'run npm run docs').toBe(checksPage()))
