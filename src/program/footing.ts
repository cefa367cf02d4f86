// How Node is to run here; imported before all else.

import { enableCompileCache } from 'node:module'
import { setFlagsFromString } from 'node:v8'

// What was compiled is kept for the next start; where no folder can be written to, nothing is.
const { directory } = enableCompileCache()
// Threads know of it by this alone; it spares each 15 MB.
if (directory) process.env.NODE_COMPILE_CACHE ??= directory
// Else V8 sets up to 48 MB aside for what is new. It stays at what it starts with, which --min-semi-space-size sets: with
// 4 MB a question is answered in two thirds of the time that it takes with the usual 1, and more brings no more.
setFlagsFromString('--semi-space-growth-factor=1')
