// Installs the homeserver before the first test, and says which one the tests ran against.

import { installSynapse } from '../../support/matrix/synapse.ts'

export default function setup(): void {
  process.stdout.write('preparing Synapse from the Python Package Index (the first time takes a minute or two)\n')
  process.stdout.write(`testing against Synapse ${installSynapse()}\n`)
}
