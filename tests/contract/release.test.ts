// What a release is checked for finds what is wrong, and today's files hold.

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { faultsOf, nextVersion, releasesIn } from '../../release/changelog.ts'
import { installed, licencesPage, unfit } from '../../release/licences.ts'

const changelog = (...lines: readonly string[]) => releasesIn(lines.join('\n'))

describe('the changelog', () => {
  it('has its form', () => expect(faultsOf(releasesIn(readFileSync('CHANGELOG.md', 'utf8')))).toEqual([]))

  it.each([
    [['## [0.2.0] - 2026-05-01', '## [0.1.0] - 2026-04-01'], '[Unreleased] does not stand first'],
    [['## [Unreleased]', '## [0.1.0]'], '0.1.0 has no date'],
    [['## [Unreleased]', '## [0.1.0] - 2026-05-01', '## [0.1.1] - 2026-04-01'], '0.1.0 is not the newer'],
    [['## [Unreleased]', '### News'], 'no kind: News'],
  ])('is told off for %j', (lines, fault) => expect(faultsOf(changelog(...lines))).toEqual([fault]))

  it('knows no other headings', () => expect(() => changelog('## 0.1.0')).toThrow('no heading'))

  it.each([
    ['0.1.0', ['Fixed', 'Security'], '0.1.1'],
    ['0.1.9', ['Added', 'Fixed'], '0.2.0'],
    ['0.1.0', ['Removed'], '0.2.0'],
    ['1.4.2', ['Removed'], '2.0.0'],
    ['1.4.2', [], undefined],
  ])('after %s with %j names %s', (last, kinds, next) => {
    const unreleased = kinds.map(kind => `### ${kind}`)
    expect(nextVersion(changelog('## [Unreleased]', ...unreleased, `## [${last}] - 2026-05-01`))).toBe(next)
  })
})

describe('the licences', () => {
  it('are all fit, and on their page', () => {
    expect(unfit(installed())).toEqual([])
    expect(readFileSync('docs/licences.md', 'utf8'), 'run npm run docs').toBe(licencesPage())
  })

  it.each(['GPL-3.0', 'none', 'UNLICENSED', 'Bitstream-Vera'])('%s is unfit', licence => {
    expect(unfit([{ name: 'other', version: '1.0.0', licence }])).toHaveLength(1)
  })
})
