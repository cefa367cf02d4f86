// Runs the benches named on the command line, or all: `npm run bench -- core discord`.

import { benches, type Row } from './benches.ts'

const wanted = process.argv.slice(2)
const unknown = wanted.filter(name => !(name in benches))
if (unknown.length > 0) throw new Error(`no bench ${unknown.join(', ')}; there are: ${Object.keys(benches).join(', ')}`)

for (const [name, load] of Object.entries(benches)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue
  const rows: Row[] = await (await load()).default()
  console.log(`\n${name}`)
  for (const row of rows) console.log(`  ${row.name.padEnd(64)} ${row.value.padStart(18)}  ${row.ratio ?? ''}`)
}
