// Changes the sources in a copy of them, one place at a time, and looks whether a test notices.
//
//   npm run test:mutants                            every place of every area
//   npm run test:mutants -- envelope inbox          of these areas
//   npm run test:mutants -- --since main~5          a sample of the files changed since, or of all where none was
//   npm run test:mutants -- charging --sample 40    forty runs of twelve lines, the same for the same --seed

import { execFileSync } from 'node:child_process'
import { globSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { relative } from 'node:path'
import { parseArgs } from 'node:util'
import { Stryker } from '@stryker-mutator/core'
import { type Area, areas } from './areas.ts'
import { windowsIn } from './windows.ts'

type Mutants = Awaited<ReturnType<Stryker['runMutationTest']>>

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { since: { type: 'string' }, sample: { type: 'string' }, seed: { type: 'string', default: '1' } },
})
/** Runs of lines of an area, where it is only looked at for what changed. */
const usualSample = 4

function placesOf({ files }: Area): readonly string[] {
  const all = globSync(files)
  const count = Number(values.sample ?? (values.since ? usualSample : 0))
  const changed = values.since ? changedSince(values.since).filter(file => all.includes(file)) : []
  return count > 0 ? windowsIn(changed.length > 0 ? changed : all, count, Number(values.seed)) : all
}

const changedSince = (commit: string): readonly string[] =>
  execFileSync('git', ['diff', '--name-only', commit], { encoding: 'utf8' }).split('\n')

async function mutantsOf(area: string, places: readonly string[]): Promise<Mutants> {
  process.env.MUTANTS_OF = area
  process.env.CASES ??= '0.05'
  // It leaves out texts, which the types refuse where they decide, and tsconfig.json, which it would rewrite with an
  // interface that the compiler no longer has.
  const stryker = new Stryker({
    configFile: 'tests/mutants/stryker.json',
    mutate: [...places],
    concurrency: availableParallelism(),
  })
  return await stryker.runMutationTest()
}

const noticed = ['Killed', 'Timeout']
const unnoticed = ['Survived', 'NoCoverage']
const isSampled = values.sample !== undefined || values.since !== undefined

/** Few changes say little of all: a sample fails only where half of what is wanted is not noticed. */
const leastOf = ({ least }: Area): number => (isSampled ? least / 2 : least)

/** Prints what no test noticed. True where enough was noticed. */
function isEnough(name: string, area: Area, mutants: Mutants): boolean {
  const killed = mutants.filter(({ status }) => noticed.includes(status)).length
  const left = mutants.filter(({ status }) => unnoticed.includes(status))
  for (const { fileName, location, mutatorName, replacement = '', status } of left) {
    const place = `${relative('.', fileName)}:${location.start.line}:${location.start.column}`
    console.log(`${place} ${status} ${mutatorName}: ${replacement.replace(/\s+/g, ' ').slice(0, 80)}`)
  }
  const all = killed + left.length
  const percent = (100 * killed) / (all || 1)
  console.log(`${name}: ${killed} of ${all} changes are noticed, ${percent.toFixed(1)} %; at least ${leastOf(area)} %`)
  return all === 0 || percent >= leastOf(area)
}

let enough = true
for (const [name, area] of Object.entries(areas))
  if (positionals.length === 0 || positionals.includes(name))
    enough = isEnough(name, area, await mutantsOf(name, placesOf(area))) && enough
process.exitCode = enough ? 0 : 1
