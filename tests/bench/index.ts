// Runs the benches named on the command line, or all: `npm run bench -- core discord`; beside those of another commit:
// `npm run bench -- --against db9e185 core`.

import { parseArgs } from 'node:util'
import { against } from './against.ts'
import { benches, type Row } from './benches.ts'

const { values, positionals: wanted } = parseArgs({ options: { against: { type: 'string' } }, allowPositionals: true })
const unknown = wanted.filter(name => !(name in benches))
if (unknown.length > 0) throw new Error(`no bench ${unknown.join(', ')}; there are: ${Object.keys(benches).join(', ')}`)

if (values.against === undefined) await run()
else against(values.against, wanted)

async function run(): Promise<void> {
  for (const [name, load] of Object.entries(benches)) {
    if (wanted.length > 0 && !wanted.includes(name)) continue
    const rows: Row[] = await (await load()).default()
    console.log(`\n${name}`)
    for (const row of rows) console.log(`  ${row.name.padEnd(64)} ${row.value.padStart(18)}  ${row.ratio ?? ''}`)
  }
}
