// The same benches at another commit, in turn with ours, so that a drift of the machine falls on both.

import { execFileSync } from 'node:child_process'
import { mkdtempSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { percentile } from './timing.ts'

const rounds = 3

/** Prints, for each figure that both commits have, its median here and there and the ratio of the two. */
export function against(revision: string, wanted: readonly string[]): void {
  const there = join(mkdtempSync(join(tmpdir(), 'chargehand-bench-')), 'there')
  execFileSync('git', ['worktree', 'add', '--quiet', '--detach', there, revision])
  try {
    symlinkSync(resolve('node_modules'), join(there, 'node_modules'))
    const [ours, theirs]: [Figures, Figures] = [new Map(), new Map()]
    for (let round = 0; round < rounds; round++) {
      measure('.', wanted, ours)
      measure(there, wanted, theirs)
    }
    console.log(`${'median'.padEnd(64)} ${'here'.padStart(12)} ${revision.padStart(12)}  here / there`)
    for (const [name, { values, unit }] of ours) {
      const other = theirs.get(name)
      if (other?.unit !== unit) continue
      const [here, before] = [percentile(values, 50), percentile(other.values, 50)]
      const shown = [here, before].map(value => `${value} ${unit}`.padStart(12)).join(' ')
      console.log(`${name.padEnd(64)} ${shown}  ${(here / before).toFixed(2)}`)
    }
  } finally {
    execFileSync('git', ['worktree', 'remove', '--force', there])
  }
}

type Figures = Map<string, { readonly values: number[]; readonly unit: string }>

/** Reads what a bench prints: two spaces, the name, and a number with its unit. */
function measure(folder: string, wanted: readonly string[], into: Figures): void {
  const printed = execFileSync('npm', ['run', '--silent', 'bench', '--', ...wanted], { cwd: folder, encoding: 'utf8' })
  for (const [, name = '', value, unit = ''] of printed.matchAll(/^ {2}(\S.*?) {2,}(\d[\d.]*)(?: (\S+))?/gm)) {
    const figure = into.get(name) ?? { values: [], unit }
    figure.values.push(Number(value))
    into.set(name, figure)
  }
}
