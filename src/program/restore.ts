// Fills an empty memory from a backup, while the program is stopped: npm run restore -- <file>

import { readFile } from 'node:fs/promises'
import { checkBackup, restore } from '../memory/opening/backup.ts'
import { connect } from '../memory/opening/connect.ts'
import { migrations } from '../memory/opening/migrations.ts'
import { fileArgument, run } from './memory-place.ts'

await run(async place => {
  const file = fileArgument('restore')
  const lines = (await readFile(file, 'utf8')).split('\n')
  const backup = await checkBackup(lines, migrations)
  const db = connect(place)
  const rows = await restore(db, backup, migrations).finally(() => db.destroy())
  return `Restored ${rows} rows from ${file}.`
})
