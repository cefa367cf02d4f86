// The program. Everything else is imported after what it stands on.

import './program/footing.ts'

const { start } = await import('./start.ts')
await start()
