// The electrochemical model computed anew and set beside the project's own: npm run check:physics [-- --short] [--write].

import { execFileSync } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { tableOf } from './compare.ts'
import { type Row, rowsIn, storedRows } from './rows.ts'

/** From the Python Package Index; not needed to run the project. */
const version = '26.10.1.1'
const environment = join(tmpdir(), 'chargehand-tests', `pybamm-${version}`)
const python = join(environment, 'bin', 'python')
const here = (name: string) => fileURLToPath(new URL(name, import.meta.url))
const page = here('../../docs/physics.md')
/** Solvers differ by so much from machine to machine. */
const mostApart = 0.005

function install(): void {
  const done = join(environment, 'complete')
  if (existsSync(done)) return
  process.stdout.write('installing the electrochemical model (the first time takes a minute or two)\n')
  rmSync(environment, { recursive: true, force: true })
  mkdirSync(environment, { recursive: true })
  execFileSync('python3', ['-m', 'venv', environment], { stdio: 'inherit' })
  execFileSync(python, ['-m', 'pip', 'install', '--quiet', `pybamm==${version}`], { stdio: 'inherit' })
  writeFileSync(done, '')
}

function refuseOther(computed: readonly Row[]): void {
  for (const row of computed) {
    const stored = storedRows.find(
      one => one.set === row.set && one.model === row.model && one.rate_C === row.rate_C && one.start === row.start,
    )
    const apart = stored ? Math.abs(row.end_s / stored.end_s - 1) : Number.POSITIVE_INFINITY
    if (apart > mostApart)
      throw new Error(
        `${row.set} at ${row.rate_C}C from ${row.start} takes ${row.end_s} s, not ${stored?.end_s} s as stored`,
      )
  }
}

install()
const isShort = process.argv.includes('--short')
const lines = execFileSync(python, [here('reference.py'), ...(isShort ? ['--short'] : [])], {
  encoding: 'utf8',
  stdio: ['ignore', 'pipe', 'inherit'],
})
const computed = rowsIn(lines)
const table = tableOf(isShort ? storedRows : computed)
const isWritten = process.argv.includes('--write')
if (isWritten && !isShort) {
  writeFileSync(here('reference.jsonl'), lines)
  writeFileSync(page, readFileSync(page, 'utf8').replace(/\| known[\s\S]*$/, `${table}\n`))
}
if (!isWritten) refuseOther(computed)
process.stdout.write(`${computed.length} charges computed anew\n${table}\n`)
