// Makes a recovery key for the Matrix account and prints it: npm run -s matrix:recovery-key

import { randomBytes } from 'node:crypto'
import { encodeRecoveryKey } from 'matrix-js-sdk/lib/crypto-api/recovery-key.js'

console.log(encodeRecoveryKey(randomBytes(32)))
