// The program. JavaScript, as what strips the types of a first file costs 17 MB and 30 ms; all others come from the cache.

import './program/footing.js'

const { start } = await import('./start.ts')
await start()
