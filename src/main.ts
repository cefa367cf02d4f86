// The program. What Node has compiled is kept for the next start, so everything else is imported after this.

import { enableCompileCache } from 'node:module'

enableCompileCache()
const { start } = await import('./start.ts')
await start()
