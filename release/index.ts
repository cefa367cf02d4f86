// Whether this can be released: npm run release -- --dry. Without --dry it also writes the bill of materials, and says how
// to tag.

import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { bomOf, faultsOfBom } from './bom.ts'
import { faultsOf, nextVersion, releasesIn } from './changelog.ts'
import { installed, licencesPage, unfit } from './licences.ts'

const isDry = process.argv.includes('--dry')
const { name, version } = JSON.parse(readFileSync('package.json', 'utf8')) as { name: string; version: string }
const releases = releasesIn(readFileSync('CHANGELOG.md', 'utf8'))
const released = releases.flatMap(one => one.version ?? [])
const next = nextVersion(releases)
const packages = installed()
const bom = bomOf(name)
const git = (...what: readonly string[]) => execFileSync('git', what, { encoding: 'utf8' }).trim()

const said = (wrong: boolean, fault: string): readonly string[] => (wrong ? [fault] : [])

const checks: Readonly<Record<string, readonly string[]>> = {
  'the changelog has its form': faultsOf(releases),
  'its newest release is the version of the package': said(released[0] !== version, `${released[0]}, not ${version}`),
  'each release left a database of each kind to upgrade from': released.flatMap(one =>
    ['sqlite', 'postgres']
      .map(kind => `tests/fixtures/releases/${one}/${kind}.sql`)
      .filter(file => !existsSync(file))
      .map(file => `${file} is missing`),
  ),
  'every licence is known and fit': unfit(packages).map(one => `${one.name} ${one.version}: ${one.licence}`),
  'the page of licences is of today': said(
    readFileSync('docs/licences.md', 'utf8') !== licencesPage(packages),
    'run npm run docs',
  ),
  [`the bill of materials names ${bom.components.length} packages, each of the lock file`]: faultsOfBom(bom, packages),
  ...(isDry
    ? {}
    : {
        'nothing is left unreleased': said(next !== undefined, `it would be ${next}`),
        'all is committed': said(git('status', '--porcelain') !== '', 'git status shows what is not'),
        'the version has no tag yet': said(git('tag', '--list', `v${version}`) !== '', `v${version} is there`),
      }),
}

for (const [check, faults] of Object.entries(checks)) {
  console.log(`${faults.length === 0 ? 'ok   ' : 'FAULT'} ${check}`)
  for (const fault of faults) console.log(`      ${fault}`)
}
if (Object.values(checks).some(faults => faults.length > 0)) process.exit(1)

if (isDry) console.log(next ? `What is unreleased would be ${next}.` : `${version} can be released.`)
else {
  const file = `${name}-${version}.cdx.json`
  writeFileSync(file, `${JSON.stringify(bom, undefined, 2)}\n`)
  console.log(`${file} is to go with the release. Now:
git tag --sign v${version} --message "Chargehand ${version}"
git verify-tag v${version} && git push origin v${version}`)
}
