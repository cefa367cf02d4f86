// Writes a small command that works, to be made into another: npm run new -- command taper

import { execFileSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { commands } from '../commands/index.ts'
import { families, filesOf, isFree } from './command.ts'

const [what, asked = ''] = process.argv.slice(2)
const { family = 'charge', name = '' } = /^(?:(?<family>[a-z]+)\/)?(?<name>[a-z]+)$/.exec(asked)?.groups ?? {}

if (what !== 'command' || name === '' || !families.includes(family)) {
  console.error(`npm run new -- command <name>, or <family>/<name> with one of ${families.join(', ')}`)
  process.exit(2)
}
if (!isFree(name, commands)) {
  console.error(`"${name}" is taken: a command or a detail bears that name`)
  process.exit(2)
}

for (const [path, text] of filesOf({ family, name })) {
  writeFileSync(path, text)
  console.log(path)
}
for (const [told, script] of [
  ['in our layout', ['biome', 'check', '--write', 'commands', 'src/language/corpus', 'tests/unit/commands']],
  ['learning what it is asked like, some minutes', ['node', 'training/model/train.ts']],
  ['its page', ['node', 'docs/write/write-docs.ts']],
] as const) {
  console.log(`… ${told}`)
  execFileSync(script[0], script.slice(1), { stdio: 'pipe' })
}
console.log(`Ask: npm run -s ask -- "what is the ${name} of a 3S 720 LiHV"
Then make it yours: everything to change is marked with "Yours".`)
