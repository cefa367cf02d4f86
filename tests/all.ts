// What every change must pass: the tests, and beside them the types and the lint, which use what the tests leave idle.

import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { text } from 'node:stream/consumers'

const ended = async (run: ChildProcess): Promise<boolean> => (await once(run, 'close'))[0] === 0

/** Tells what it has to say when the tests have said theirs. */
function beside(script: string) {
  const run = spawn('npm', ['run', '--silent', script], { stdio: ['ignore', 'pipe', 'pipe'] })
  return { script, passes: ended(run), said: Promise.all([text(run.stdout), text(run.stderr)]) }
}

const others = ['typecheck', 'lint'].map(beside)
const passes = [await ended(spawn('npm', ['run', '--silent', 'test:unit'], { stdio: 'inherit' }))]
for (const { script, passes: other, said } of others) {
  passes.push(await other)
  process.stdout.write(`${(await said).join('')}${script} ${(await other) ? 'passes' : 'fails'}\n`)
}
process.exitCode = passes.every(Boolean) ? 0 : 1
